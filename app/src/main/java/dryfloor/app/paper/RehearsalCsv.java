package dryfloor.app.paper;

import static dryfloor.app.report.CsvTable.number;
import static dryfloor.app.report.CsvTable.text;

import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.rehearsal.Rehearsal;
import dryfloor.analysis.rehearsal.RehearsalStep;
import dryfloor.app.report.CsvTable;
import dryfloor.model.unit.Units;

/**
 * The rehearsal sheet to be filled in and given back: one line for each vessel of each failure,
 * depths below the rim in mm or inches, the measured levels blank. Every line names the drawing it
 * was made for, so that a sheet can't be taken for that of another version.
 */
public final class RehearsalCsv {

  /** Id of the failure. */
  public static final String FAILURE = "failure";

  /** Id of the vessel. */
  public static final String VESSEL = "vessel";

  /** Who measured, and when. */
  public static final String BY = "measured_by";

  /** Fingerprint of the drawing. */
  public static final String DRAWING = "drawing_sha256";

  private final Question question;
  private final Unit unit;
  private final CsvTable table = new CsvTable();

  private RehearsalCsv(Question question) {
    this.question = question;
    this.unit = Unit.of(question.wording().amounts().units());
  }

  /** The text of the file. */
  public static String of(Question question) {
    return new RehearsalCsv(question).all();
  }

  /** In what depths are written, as the heads of the columns say. */
  public enum Unit {
    MILLIMETRES("mm", 1e-3, 0),
    INCHES("in", 0.0254, 2);

    private static final double EXAMPLE = 0.203;

    private final String word;
    private final double metres;
    private final int digits;

    Unit(String word, double metres, int digits) {
      this.word = word;
      this.metres = metres;
      this.digits = digits;
    }

    static Unit of(Units units) {
      return switch (units) {
        case METRIC -> MILLIMETRES;
        case US -> INCHES;
      };
    }

    /** Head of the column for what is measured before anything is switched off. */
    public String before() {
      return "measured_before_below_rim_" + word;
    }

    /** Head of the column for what is measured once all is still. */
    public String measured() {
      return "measured_below_rim_" + word;
    }

    /** What a person calls them. */
    public String words() {
      return switch (this) {
        case MILLIMETRES -> "millimetres";
        case INCHES -> "inches";
      };
    }

    /** A depth as somebody may write it. */
    public String example() {
      return depth(EXAMPLE);
    }

    /** How many metres one of them is. */
    public double metres() {
      return metres;
    }

    private String depth(double depth) {
      return number(depth / metres, digits);
    }
  }

  private String all() {
    table.texts(
        FAILURE,
        VESSEL,
        "name",
        "before_below_rim_" + unit.word,
        "expected_below_rim_" + unit.word,
        "tolerance_" + unit.word,
        "abort_below_rim_" + unit.word,
        unit.before(),
        unit.measured(),
        BY,
        "computed_on",
        DRAWING);
    for (RehearsalStep step : Rehearsal.of(question.sweep())) {
      step.levels().forEach(level -> line(step, level));
    }
    return table.all();
  }

  private void line(RehearsalStep step, RehearsalStep.ExpectedLevel level) {
    table.line(
        text(FailureNames.id(step.result().failure())),
        text(level.vessel()),
        text(question.wording().names().label(level.vessel())),
        unit.depth(level.rim() - level.before()),
        unit.depth(level.rim() - level.expected()),
        unit.depth(Rehearsal.TOLERANCE),
        unit.depth(level.rim() - level.abort()),
        "",
        "",
        "",
        text(question.drawing().date()),
        text(question.drawing().fingerprint()));
  }
}
