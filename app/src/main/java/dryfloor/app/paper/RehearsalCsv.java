package dryfloor.app.paper;

import static dryfloor.app.report.CsvTable.number;
import static dryfloor.app.report.CsvTable.text;

import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.rehearsal.Rehearsal;
import dryfloor.analysis.rehearsal.RehearsalStep;
import dryfloor.app.report.CsvTable;
import java.util.List;

/**
 * The rehearsal sheet to be filled in and given back: one line for each vessel of each failure,
 * always in mm below the rim, the measured level blank.
 */
public final class RehearsalCsv {

  /** Id of the failure. */
  public static final String FAILURE = "failure";

  /** Id of the vessel. */
  public static final String VESSEL = "vessel";

  /** What is filled in (mm below the rim). */
  public static final String MEASURED = "measured_below_rim_mm";

  /** Who measured, and when. */
  public static final String BY = "measured_by";

  private static final List<String> HEADS =
      List.of(
          FAILURE,
          VESSEL,
          "name",
          "before_below_rim_mm",
          "expected_below_rim_mm",
          "tolerance_mm",
          "abort_below_rim_mm",
          MEASURED,
          BY);

  private static final double MM = 1000;

  private RehearsalCsv() {}

  /** The text of the file. */
  public static String of(Question question) {
    CsvTable table = new CsvTable();
    table.texts(HEADS.toArray(String[]::new));
    for (RehearsalStep step : Rehearsal.of(question.sweep())) {
      for (RehearsalStep.ExpectedLevel level : step.levels()) {
        table.line(
            text(FailureNames.id(step.result().failure())),
            text(level.vessel()),
            text(question.wording().names().label(level.vessel())),
            number((level.rim() - level.before()) * MM, 0),
            number((level.rim() - level.expected()) * MM, 0),
            number(Rehearsal.TOLERANCE * MM, 0),
            number((level.rim() - level.abort()) * MM, 0),
            "",
            "");
      }
    }
    return table.all();
  }
}
