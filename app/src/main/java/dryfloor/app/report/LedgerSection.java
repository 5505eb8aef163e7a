package dryfloor.app.report;

import dryfloor.analysis.outcome.Ledger;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.app.report.TextTable.Column;
import java.util.List;
import java.util.stream.Stream;

/** How much water went from where to where. */
final class LedgerSection {

  private LedgerSection() {}

  static void write(Wording wording, Outcome outcome, Lines lines) {
    Ledger ledger = outcome.ledger();
    List<Movement> movements = Movements.of(ledger);
    if (movements.isEmpty()) {
      return;
    }
    lines.heading("Where the water went in " + wording.amounts().hours(ledger.until()));
    TextTable table =
        new TextTable(
            Column.left("from"),
            Column.left("to"),
            Column.left("how"),
            Column.right("water"),
            Column.right("round and round"));
    Stream.concat(
            movements.stream().filter(movement -> changesPlace(wording, movement)),
            movements.stream().filter(movement -> !changesPlace(wording, movement)))
        .forEach(movement -> row(wording, table, movement));
    ledger.standing().forEach(standing -> row(wording, table, standing));
    lines.table(table);
    lines.paragraph("  ", balance(wording, ledger));
  }

  private static boolean changesPlace(Wording wording, Movement movement) {
    return wording.amounts().isWorthTelling(movement.moved());
  }

  private static void row(Wording wording, TextTable table, Movement movement) {
    Amounts amounts = wording.amounts();
    boolean circles = amounts.isWorthTelling(movement.round());
    if (changesPlace(wording, movement) || circles) {
      table.row(
          wording.names().label(movement.from()),
          wording.names().label(movement.to()),
          MovementWords.way(wording, movement),
          changesPlace(wording, movement) ? amounts.volume(movement.moved()) : "",
          circles ? amounts.volume(movement.round()) : "");
    }
  }

  private static void row(Wording wording, TextTable table, Ledger.Standing standing) {
    double gained = standing.after() - standing.before();
    if (wording.amounts().isWorthTelling(gained)) {
      table.row(
          wording.names().label(standing.id()),
          "",
          gained < 0 ? "stood in it, has left it" : "stands in it now",
          wording.amounts().volumeChange(gained),
          "");
    }
  }

  private static String balance(Wording wording, Ledger ledger) {
    return wording.amounts().isWater(ledger.imbalance())
        ? "Gains and losses differ by " + wording.amounts().volume(ledger.imbalance()) + "."
        : "Every drop is accounted for.";
  }
}
