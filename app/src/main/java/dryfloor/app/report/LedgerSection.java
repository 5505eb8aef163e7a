package dryfloor.app.report;

import dryfloor.analysis.outcome.Ledger;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.app.report.TextTable.Column;

/** How much water went from where to where. */
final class LedgerSection {

  private LedgerSection() {}

  static void write(Wording wording, Outcome outcome, Lines lines) {
    Ledger ledger = outcome.ledger();
    if (ledger.entries().isEmpty()) {
      return;
    }
    lines.heading("Where the water went in " + wording.amounts().hours(ledger.until()));
    TextTable table =
        new TextTable(
            Column.left("from"), Column.left("to"), Column.left("how"), Column.right("water"));
    for (Ledger.Entry entry : ledger.entries()) {
      table.row(
          wording.names().label(entry.from()),
          wording.names().label(entry.to()),
          way(wording, entry),
          wording.amounts().volume(entry.volume()));
    }
    for (Ledger.Standing standing : ledger.standing()) {
      double gained = standing.after() - standing.before();
      if (!wording.amounts().isWater(gained)) {
        continue;
      }
      table.row(
          wording.names().label(standing.id()),
          "",
          gained < 0 ? "stood in it, has left it" : "stands in it now",
          wording.amounts().volumeChange(gained));
    }
    lines.table(table);
    lines.add(
        "  Gains and losses agree to "
            + wording.amounts().volume(Math.abs(ledger.imbalance()))
            + ".");
  }

  /** Pipes are filled and emptied as well as passed through. */
  private static String run(Ledger.Entry entry, String path) {
    if (entry.from().equals(entry.path())) {
      return "emptying itself";
    }
    return entry.to().equals(entry.path()) ? "filling it" : "through " + path;
  }

  private static String way(Wording wording, Ledger.Entry entry) {
    String path = wording.names().the(entry.path());
    return switch (entry.way()) {
      case RUN -> run(entry, path);
      case WEIR -> "over " + path;
      case RIM -> "over its rim";
      case SILL -> "over its sill";
      case LEAK -> "leak in " + path;
      case PARTED -> "where " + path + " came apart";
      case THROWN -> "thrown out";
      case POURED -> "by hand";
      case BURST -> "burst";
      case HELD_BY_DEVICE -> "given back by " + path;
    };
  }
}
