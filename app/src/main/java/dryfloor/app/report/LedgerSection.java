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
          way(wording, movement),
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

  private static String way(Wording wording, Movement movement) {
    String path = wording.names().the(movement.path());
    return switch (movement.way()) {
      case RUN -> run(movement, path);
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

  /** A run's own water, where it is not known by which end it came or went. */
  private static String run(Movement movement, String path) {
    if (movement.from().equals(movement.path())) {
      return "water that stood in it";
    }
    return movement.to().equals(movement.path()) ? "to fill it" : "through " + path;
  }
}
