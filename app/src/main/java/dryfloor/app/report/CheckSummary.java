package dryfloor.app.report;

import dryfloor.analysis.sweep.SweepResult;
import dryfloor.app.report.TextTable.Column;
import dryfloor.model.file.VisibleText;
import java.nio.file.Path;

/** How several drawings fared, a line each. */
public final class CheckSummary {

  private final TextTable table =
      new TextTable(
          Column.left("drawing"),
          Column.right("wet"),
          Column.right("caught"),
          Column.right("dry"),
          Column.right("no answer"));

  /** A drawing with answers. */
  public void answered(Path file, SweepResult sweep) {
    Tally tally = Tally.of(sweep.results());
    table.row(
        VisibleText.of(file.toString()),
        count(tally, Answer.WET),
        count(tally, Answer.CAUGHT),
        count(tally, Answer.DRY),
        count(tally, Answer.NO_ANSWER));
  }

  /** A drawing that could not be answered. */
  public void refused(Path file) {
    table.row(VisibleText.of(file.toString()) + ": the drawing is wrong", "", "", "", "");
  }

  /** A drawing that was too large for an answer. */
  public void unanswered(Path file) {
    table.row(VisibleText.of(file.toString()) + ": no answer, too large", "", "", "", "");
  }

  /** The lines so far. */
  public String text(Ink ink) {
    Lines lines = new Lines(ink);
    lines.heading("All drawings");
    lines.table(table);
    return lines.text();
  }

  private static String count(Tally tally, Answer answer) {
    return Integer.toString(tally.of(answer));
  }
}
