package dryfloor.app.report;

import dryfloor.analysis.outcome.Outcome;
import dryfloor.app.report.TextTable.Column;

/** Every vessel before and after. */
final class LevelSection {

  private LevelSection() {}

  static void write(Wording wording, Outcome outcome, Lines lines) {
    lines.heading("Levels, above the floor of each vessel");
    TextTable table =
        new TextTable(
            Column.left("vessel"),
            Column.right("before"),
            Column.right("after"),
            Column.right("change"),
            Column.right("below rim"),
            Column.right("highest"),
            Column.right("water"),
            Column.right("change"),
            Column.right("salinity"));
    outcome.vessels().forEach(vessel -> row(wording, table, vessel));
    lines.table(table);
  }

  private static void row(Wording wording, TextTable table, Outcome.VesselOutcome vessel) {
    Amounts amounts = wording.amounts();
    table.row(
        wording.names().label(vessel.id()),
        amounts.level(vessel.levelBefore() - vessel.bottom()),
        amounts.level(vessel.levelAfter() - vessel.bottom()),
        amounts.levelChange(vessel.levelAfter() - vessel.levelBefore()),
        belowRim(amounts, vessel.rim() - vessel.levelAfter()),
        amounts.level(vessel.highestLevel() - vessel.bottom()),
        amounts.tabled(Math.max(0, vessel.volumeAfter())),
        amounts.volumeChange(vessel.volumeAfter() - vessel.volumeBefore()),
        salinity(amounts, vessel));
  }

  private static String belowRim(Amounts amounts, double left) {
    return left > -VerdictSentence.FILM
        ? amounts.level(Math.max(0, left))
        : amounts.level(-left) + " over it";
  }

  private static String salinity(Amounts amounts, Outcome.VesselOutcome vessel) {
    if (!amounts.isWorthTelling(vessel.volumeAfter())) {
      return "";
    }
    String after = amounts.salinity(vessel.salinityAfter());
    String before = amounts.salinity(vessel.salinityBefore());
    boolean same = before.equals(after) || vessel.volumeBefore() <= 0;
    return same ? after : before.replace(" g/kg", "") + " → " + after;
  }
}
