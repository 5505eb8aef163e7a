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
        marks.powerLoss() == VesselMarks.PowerLoss.WETS_A_FLOOR
            ? MarkHeights.NONE_IS_SAFE
            : marks.highestSafe().stream()
                .mapToObj(level -> height(wording, marks, level) + MarkHeights.doubt(marks))
                .findFirst()
                .orElse("–"),
        wording.amounts().level(marks.afterPowerLoss() - marks.bottom())
            + " ("
            + MarkHeights.belowAfterPowerLoss(wording.amounts(), marks)
            + ")",
        wording.amounts().level(marks.rim() - marks.bottom()));
  }

  private static String height(Wording wording, VesselMarks marks, double level) {
    return wording.amounts().level(level - marks.bottom())
        + " ("
        + MarkHeights.below(wording.amounts(), marks, level)
        + ")";
  }
}
