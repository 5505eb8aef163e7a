package dryfloor.app.report;

import dryfloor.analysis.comparison.Changes;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.app.report.TextTable.Column;
import dryfloor.model.Installation;
import java.util.List;

/** Two drawings, failure by failure: what ends worse, better and the same, and by how much. */
public final class CompareReport {

  private final Changes changes;
  private final Wording wording;
  private final Installation old;
  private final Lines lines;

  private CompareReport(Changes changes, Wording wording, Installation old, Ink ink) {
    this.changes = changes;
    this.wording = wording;
    this.old = old;
    this.lines = new Lines(ink);
  }

  /**
   * The whole report.
   *
   * @param wording of the new drawing
   * @param old drawing, for what only it has
   */
  public static String of(Changes changes, Wording wording, Installation old, Ink ink) {
    CompareReport report = new CompareReport(changes, wording, old, ink);
    report.head();
    report.table("Worse", changes.worse());
    report.table("Better", changes.better());
    report.onlyOne();
    return report.lines.text();
  }

  private void head() {
    lines.add(lines.ink().heading(wording.installation().name()));
    lines.paragraph("", "Compared with: " + old.name() + ".");
    lines.paragraph(
        "",
        changes.worse().size()
            + " worse, "
            + changes.better().size()
            + " better, "
            + changes.same().size()
            + " the same, "
            + changes.added().size()
            + " only in the new drawing, "
            + changes.gone().size()
            + " only in the old one.");
  }

  private void table(String heading, List<Changes.Change> rows) {
    if (rows.isEmpty()) {
      return;
    }
    lines.heading(heading);
    TextTable table =
        new TextTable(
            Column.left("answer"),
            Column.broken("failure", 44),
            Column.right("water on floors"),
            Column.right("least freeboard"));
    ChangeWords words = new ChangeWords(wording);
    rows.forEach(
        change ->
            table.row(
                turn(change), words.failure(change), words.water(change), words.freeboard(change)));
    lines.table(table);
  }

  private String turn(Changes.Change change) {
    String now = lines.ink().answer(Answer.of(change.now()));
    return change.isTurned() ? Answer.of(change.before()).word() + " → " + now : now;
  }

  private void onlyOne() {
    if (!changes.added().isEmpty()) {
      lines.heading("Only in the new drawing");
      changes.added().forEach(result -> lines.add("  " + added(result)));
    }
    if (!changes.gone().isEmpty()) {
      lines.heading("Only in the old drawing");
      changes.gone().forEach(failure -> lines.add("  " + failure.name()));
    }
    lines.blank();
    lines.paragraph("", Cautions.STATEMENT);
  }

  private String added(FailureResult result) {
    return lines.ink().answer(Answer.of(result))
        + "  "
        + FailureNames.name(result.failure(), wording.installation());
  }
}
