package dryfloor.analysis.simulation;

import dryfloor.analysis.logbook.Logbook;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * What the third view said of shipped failures, as a dated file: a line for each. Whoever runs a
 * scenario again replaces its lines.
 */
final class ThirdViewRecord {

  private static final Logbook LOGBOOK =
      new Logbook(
          Path.of(
              "src", "test", "resources", "dryfloor", "analysis", "simulation", "third-view.csv"),
          "date,scenario,failure,until (s),to the end,level at,level third (m),level engine (m),"
              + "water at,water third (m3),water engine (m3)");
  private static final int COLUMNS = 11;

  /** What is known of one failure. */
  sealed interface Entry {

    String scenario();

    String failure();
  }

  /** Followed to the end, or for a while. */
  record Compared(TwoSteppings both) implements Entry {
    @Override
    public String scenario() {
      return both.scenario();
    }

    @Override
    public String failure() {
      return both.failure();
    }
  }

  /** Not even the first hour was done in time. */
  record GivenUp(String scenario, String failure) implements Entry {}

  /** A line: what was found, and when. */
  record Line(LocalDate date, Entry entry) {}

  private ThirdViewRecord() {}

  static List<Line> read() {
    return LOGBOOK.read().stream().map(ThirdViewRecord::parse).toList();
  }

  /** The comparisons that went on to where the engine ended. */
  static List<TwoSteppings> toTheEnd() {
    return compared(read()).filter(TwoSteppings::toTheEnd).toList();
  }

  static Stream<TwoSteppings> compared(List<Line> lines) {
    return lines.stream()
        .map(Line::entry)
        .filter(Compared.class::isInstance)
        .map(entry -> ((Compared) entry).both());
  }

  /** Writes what was found today about a scenario in place of what was known of it. */
  static void renew(String scenario, List<Entry> entries) throws IOException {
    LOGBOOK.renew(scenario, entries.stream().map(ThirdViewRecord::write).toList());
  }

  private static String write(Entry entry) {
    return switch (entry) {
      case GivenUp gaveUp -> gaveUp.failure();
      case Compared compared -> compared.failure() + "," + write(compared.both());
    };
  }

  private static String write(TwoSteppings both) {
    return String.join(
        ",",
        String.format(Locale.ROOT, "%.0f", both.until()),
        String.valueOf(both.toTheEnd()),
        both.level().where(),
        number(both.level().third()),
        number(both.level().engine()),
        both.water().where(),
        number(both.water().third()),
        number(both.water().engine()));
  }

  /** To a tenth of a nanometre and of a cubic millimetre. */
  private static String number(double value) {
    return String.format(Locale.ROOT, "%.10f", value);
  }

  private static Line parse(String[] cells) {
    LocalDate date = LocalDate.parse(cells[0]);
    return cells.length == COLUMNS
        ? new Line(date, new Compared(compared(cells)))
        : new Line(date, new GivenUp(cells[1], cells[2]));
  }

  private static TwoSteppings compared(String[] cells) {
    return new TwoSteppings(
        cells[1],
        cells[2],
        Double.parseDouble(cells[3]),
        Boolean.parseBoolean(cells[4]),
        TwoSteppings.level(cells[5], Double.parseDouble(cells[7]), Double.parseDouble(cells[6])),
        TwoSteppings.water(cells[8], Double.parseDouble(cells[10]), Double.parseDouble(cells[9])));
  }
}
