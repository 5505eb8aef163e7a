package dryfloor.app.paper;

import dryfloor.analysis.mark.VesselMarks;
import dryfloor.app.report.Wording;
import java.util.List;

/** Marks for the glass, in words. */
final class MarkWords {

  private MarkWords() {}

  static List<Report.Mark> of(Question question) {
    return question.marks().stream().map(marks -> mark(question.wording(), marks)).toList();
  }

  private static Report.Mark mark(Wording wording, VesselMarks marks) {
    return new Report.Mark(
        wording.names().label(marks.vessel()),
        height(wording, marks, marks.normal()),
        marks.highestSafe().stream()
            .mapToObj(level -> height(wording, marks, level))
            .findFirst()
            .orElse("–"),
        height(wording, marks, marks.afterPowerLoss()),
        wording.amounts().level(marks.rim() - marks.bottom()));
  }

  private static String height(Wording wording, VesselMarks marks, double level) {
    return wording.amounts().level(level - marks.bottom())
        + " ("
        + wording.amounts().level(Math.max(0, marks.rim() - level))
        + " below the rim)";
  }
}
