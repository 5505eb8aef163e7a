package dryfloor.app.report;

import dryfloor.analysis.outcome.Outcome;
import dryfloor.app.report.TextTable.Column;
import java.util.List;

/** Floors, drains and supplies at the end. */
final class PlaceSection {

  private PlaceSection() {}

  static void write(Wording wording, Outcome outcome, Lines lines) {
    floors(wording, outcome, lines);
    passed(wording, "Drains took", outcome.drained(), lines);
    passed(wording, "Supplies gave", outcome.supplied(), lines);
  }

  private static void floors(Wording wording, Outcome outcome, Lines lines) {
    Amounts amounts = wording.amounts();
    lines.heading("Floors");
    TextTable table =
        new TextTable(
            Column.left("floor"),
            Column.right("got"),
            Column.right("stands on it"),
            Column.right("depth"),
            Column.right("first wet"));
    for (Outcome.FloorOutcome floor : outcome.floors()) {
      boolean wet = floor.received() > 0 || floor.firstWet().isPresent();
      table.row(
          wording.names().label(floor.id()),
          wet ? amounts.volume(floor.received()) : "dry",
          wet ? amounts.volume(floor.volume()) : "",
          wet ? amounts.level(floor.depth()) : "",
          floor.firstWet().isPresent() ? amounts.time(floor.firstWet().getAsDouble()) : "");
    }
    lines.table(table);
    if (outcome.beyond() > 0) {
      lines.add("  " + amounts.volume(outcome.beyond()) + " ran on beyond the drawing.");
    }
  }

  private static void passed(
      Wording wording, String heading, List<Outcome.Passed> passed, Lines lines) {
    if (passed.isEmpty()) {
      return;
    }
    lines.heading(heading);
    TextTable table = new TextTable(Column.left(""), Column.right(""));
    passed.forEach(
        place ->
            table.row(wording.names().label(place.id()), wording.amounts().volume(place.volume())));
    lines.table(table);
  }
}
