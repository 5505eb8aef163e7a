package dryfloor.app.report;

import static dryfloor.app.report.CsvTable.number;
import static dryfloor.app.report.CsvTable.text;

import dryfloor.analysis.outcome.Outcome;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * The values of an outcome for a spreadsheet: vessels, floors, drains, supplies and the ledger,
 * each with a head of its own and its kind in the first column. Levels in mm above each vessel's
 * own floor, water in L, always metric.
 */
public final class CsvValues {

  private static final double MM = 1000;
  private static final double LITRES = 1000;

  private final Wording wording;
  private final CsvTable table = new CsvTable();

  private CsvValues(Wording wording) {
    this.wording = wording;
  }

  /**
   * The text of a CSV file.
   *
   * @param title name of the failure, or that all is well
   */
  public static String of(Wording wording, String title, Outcome outcome) {
    return new CsvValues(wording).write(title, outcome);
  }

  private String write(String title, Outcome outcome) {
    table.texts("drawing", wording.installation().name());
    table.texts("failure", title);
    table.texts("verdict", Answer.of(outcome).word());
    table.texts("statement", Cautions.STATEMENT);
    vessels(outcome.vessels());
    floors(outcome);
    passed("drain", "took_L", outcome.drained());
    passed("supply", "gave_L", outcome.supplied());
    ledger(outcome);
    return table.all();
  }

  private void vessels(List<Outcome.VesselOutcome> vessels) {
    head(
        "vessel",
        "level_before_mm",
        "level_after_mm",
        "change_mm",
        "below_rim_mm",
        "highest_mm",
        "water_before_L",
        "water_after_L",
        "change_L",
        "spilled_L",
        "salinity_before_g_per_kg",
        "salinity_after_g_per_kg");
    for (Outcome.VesselOutcome vessel : vessels) {
      table.line(
          text("vessel"),
          text(vessel.id()),
          name(vessel.id()),
          mm(vessel.levelBefore() - vessel.bottom()),
          mm(vessel.levelAfter() - vessel.bottom()),
          mm(vessel.levelAfter() - vessel.levelBefore()),
          mm(vessel.rim() - vessel.levelAfter()),
          mm(vessel.highestLevel() - vessel.bottom()),
          litres(vessel.volumeBefore()),
          litres(vessel.volumeAfter()),
          litres(vessel.volumeAfter() - vessel.volumeBefore()),
          litres(vessel.spilled()),
          number(vessel.salinityBefore(), 2),
          number(vessel.salinityAfter(), 2));
    }
  }

  private void floors(Outcome outcome) {
    head("floor", "received_L", "standing_L", "depth_mm", "first_wet_s");
    for (Outcome.FloorOutcome floor : outcome.floors()) {
      table.line(
          text("floor"),
          text(floor.id()),
          name(floor.id()),
          litres(floor.received()),
          litres(floor.volume()),
          mm(floor.depth()),
          seconds(floor.firstWet()));
    }
    table.line(text("beyond"), "", name("beyond"), litres(outcome.beyond()), "", "", "");
  }

  private void passed(String kind, String column, List<Outcome.Passed> places) {
    head(kind, column);
    places.forEach(
        place ->
            table.line(text(kind), text(place.id()), name(place.id()), litres(place.volume())));
  }

  private void ledger(Outcome outcome) {
    table.emptyLine();
    table.texts("kind", "path", "name", "way", "from", "to", "water_L", "round_and_round_L");
    for (Movement movement : Movements.of(outcome.ledger())) {
      table.line(
          text("ledger"),
          text(movement.path()),
          name(movement.path()),
          text(movement.way().name().toLowerCase(Locale.ROOT)),
          text(movement.from()),
          text(movement.to()),
          litres(movement.moved()),
          litres(movement.round()));
    }
  }

  private void head(String kind, String... columns) {
    table.emptyLine();
    String[] all = new String[columns.length + 3];
    all[0] = "kind";
    all[1] = kind;
    all[2] = "name";
    System.arraycopy(columns, 0, all, 3, columns.length);
    table.texts(all);
  }

  private String name(String id) {
    return text(wording.names().label(id));
  }

  private static String mm(double metres) {
    return number(metres * MM, 1);
  }

  private static String litres(double cubicMetres) {
    return number(cubicMetres * LITRES, 3);
  }

  private static String seconds(OptionalDouble time) {
    return time.isPresent() ? number(time.getAsDouble(), 1) : "";
  }
}
