package dryfloor.app.report;

import dryfloor.analysis.outcome.Outcome;
import dryfloor.app.report.TextTable.Column;
import java.util.List;

/** Floors, drains and supplies at the end. */
final class PlaceSection {

  private PlaceSection() {}

  static void write(Wording wording, Outcome outcome, Lines lines) {
    floors(wording, outcome, lines);
    passed(wording, "Drains took", "came back up", outcome.drained(), lines);
    passed(wording, "Supplies gave", "ran back into it", outcome.supplied(), lines);
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
          wet ? amounts.tabled(floor.volume()) : "",
          wet ? depth(amounts, floor) : "",
          floor.firstWet().isPresent() ? amounts.time(floor.firstWet().getAsDouble()) : "");
    }
    lines.table(table);
    if (amounts.isWorthTelling(outcome.beyond())) {
      lines.add("  " + amounts.volume(outcome.beyond()) + " ran on beyond the drawing.");
    }
  }

  private static String depth(Amounts amounts, Outcome.FloorOutcome floor) {
    boolean film = floor.depth() < VerdictSentence.FILM && amounts.isWorthTelling(floor.volume());
    return film ? "a film" : amounts.level(floor.depth());
  }

  /** What a drain takes and a supply gives; the other way round it is said so. */
  private static void passed(
      Wording wording, String heading, String otherwise, List<Outcome.Passed> passed, Lines lines) {
    List<Outcome.Passed> told =
        passed.stream().filter(p -> wording.amounts().isWorthTelling(p.volume())).toList();
    if (told.isEmpty()) {
      return;
    }
    lines.heading(heading);
    TextTable table = new TextTable(Column.left(""), Column.right(""), Column.left(""));
    for (Outcome.Passed place : told) {
      table.row(
          wording.names().label(place.id()),
          wording.amounts().volume(Math.abs(place.volume())),
          place.volume() < 0 ? otherwise : "");
    }
    lines.table(table);
  }
}
