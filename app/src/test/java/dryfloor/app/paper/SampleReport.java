package dryfloor.app.paper;

import dryfloor.analysis.mark.Marks;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.Progress;
import dryfloor.analysis.sweep.Sweep;
import dryfloor.analysis.worksheet.SeverityScale;
import dryfloor.app.report.Wording;
import dryfloor.app.sample.SampleInstallation;
import dryfloor.model.Installation;
import dryfloor.model.unit.Units;
import java.util.List;
import java.util.regex.Matcher;

/** Reports for tests. */
final class SampleReport {

  private SampleReport() {}

  static Question question(Installation installation, Units units) {
    Question plain = withoutMarks(installation, units);
    return new Question(
        plain.sweep(),
        plain.wording(),
        plain.scale(),
        plain.drawing(),
        Marks.of(plain.sweep(), 1, Progress.NONE),
        List.of());
  }

  /** Without the marks, whose search takes long where there is much to fill. */
  static Question withoutMarks(Installation installation, Units units) {
    try {
      Wording wording = Wording.of(installation, units);
      return new Question(
          Sweep.everyFailure(installation, 1, Progress.NONE),
          wording,
          SeverityScale.USUAL,
          new Report.Drawing(
              installation.name(),
              "shop.json",
              "ab12",
              "2026-11-26",
              "dryfloor",
              wording.amounts().hours(installation.conditions().away())),
          List.of(),
          List.of());
    } catch (BaselineProblem problem) {
      throw new AssertionError(problem);
    }
  }

  static Report of(Installation installation, Units units) {
    return ReportWords.of(question(installation, units));
  }

  /** The template with the whole installation and its display called so, as in a JSON string. */
  static Installation named(String name) {
    String field = Matcher.quoteReplacement("\"name\": \"" + name + "\"");
    return SampleInstallation.of(
        SampleInstallation.text()
            .replaceFirst("\"name\": \"[^\"]*\"", field)
            .replaceFirst("\"name\": \"Display\"", field));
  }
}
