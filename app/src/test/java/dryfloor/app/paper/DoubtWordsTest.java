package dryfloor.app.paper;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.Progress;
import dryfloor.app.report.ReadAgain;
import dryfloor.model.Installation;
import dryfloor.model.file.InstallationFile;
import dryfloor.model.file.Reading;
import dryfloor.model.unit.Units;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What the papers tell of values that carry a tolerance. */
class DoubtWordsTest {

  private static final Installation MEASURED = read("tape-measure/as-drawn");

  /**
   * As the page of the scenario has it: the sump at its highest and the break at its lowest spill
   * 0.9 L, at the other ends nothing.
   */
  @Test
  void theWorstAndTheBestOfEveryFailureAndWhatMattersMost() throws BaselineProblem {
    Question plain = SampleReport.withoutMarks(MEASURED, Units.METRIC);
    ReadAgain drawing = ReadAgain.of(MEASURED);
    assertThat(Question.Banded.isQuick(drawing, plain.sweep())).isTrue();

    Question question = plain.with(Optional.of(Question.Banded.of(drawing, 1, Progress.NONE)));
    Report report = ReportWords.of(question);

    Report.Doubt doubt = report.doubt().orElseThrow();
    assertThat(doubt.rows()).hasSameSizeAs(plain.sweep().results());
    assertThat(doubt.rows())
        .contains(
            new Report.DoubtRow(
                "▲ WET",
                "● DRY",
                "Power lost in the whole building",
                "0 L to 910 mL",
                "−1 mm to 21 mm",
                "height of the siphon break"));
    assertThat(doubt.values()).hasSize(3).first().asString().startsWith("level of the sump, from");
    assertThat(report.owner().tally())
        .contains(
            "at worst 15 of the failures wet a floor or have no answer, at best 12; what matters"
                + " most is the level of the sump.");
    assertThat(HtmlPages.of(report)).contains("How bad and how good each failure can be");
    assertThat(ReportJson.of(report, question)).contains("\"mattersMost\"");
  }

  @Test
  void nothingIsToldWhereItWasNotWorkedOut() {
    Report report = ReportWords.of(SampleReport.withoutMarks(MEASURED, Units.METRIC));

    assertThat(report.doubt()).isEmpty();
    assertThat(HtmlPages.of(report)).doesNotContain("How bad and how good each failure can be");
    assertThat(report.owner().assumed()).anyMatch(line -> line.endsWith("are for what is drawn."));
  }

  /** A drawing that is exact has nothing to work out. */
  @Test
  void anExactDrawingIsNotRunAgain() {
    Question plain = SampleReport.withoutMarks(read("first-look/corrected"), Units.METRIC);

    assertThat(Question.Banded.isQuick(ReadAgain.of(plain.sweep().installation()), plain.sweep()))
        .isFalse();
  }

  private static Installation read(String scenario) {
    return switch (InstallationFile.read(Path.of("..", "scenarios", scenario + ".json"))) {
      case Reading.Read read -> read.installation();
      case Reading.Rejected rejected -> throw new AssertionError(rejected.problems());
    };
  }
}
