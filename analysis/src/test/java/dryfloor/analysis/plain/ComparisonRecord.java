package dryfloor.analysis.plain;

import dryfloor.analysis.logbook.Logbook;
import dryfloor.analysis.outcome.Verdict;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * The full comparison as a dated file, because it takes hours: a line for each failure. Whoever
 * runs a scenario again replaces its lines.
 */
final class ComparisonRecord {

  private static final Logbook LOGBOOK =
      new Logbook(
          Path.of("src", "test", "resources", "dryfloor", "analysis", "plain", "comparison.csv"),
          "date,scenario,failure,engine,plain,level at,level plain (m),level engine (m),"
              + "water at,water plain (m3),water engine (m3)");
  private static final int COLUMNS = 11;

  /** A line: what was found, and when. */
  record Line(LocalDate date, Entry entry) {}

  private ComparisonRecord() {}

  static List<Line> read() {
    return LOGBOOK.read().stream().map(ComparisonRecord::parse).toList();
  }

  /** Writes what was found today about a scenario in place of what was known of it. */
  static void renew(String scenario, List<Entry> entries) throws IOException {
    LOGBOOK.renew(scenario, entries.stream().map(ComparisonRecord::write).toList());
  }

  /** The same for some failures: what is known of others stays. */
  static void renewSome(String scenario, List<Entry> entries) throws IOException {
    LOGBOOK.renewSome(scenario, entries.stream().map(ComparisonRecord::write).toList());
  }

  private static String write(Entry entry) {
    return switch (entry) {
      case Entry.NotCompared not -> not.failure() + "," + not.why();
      case Entry.Compared compared -> compared.failure() + "," + write(compared.comparison());
    };
  }

  private static String write(Comparison both) {
    return String.join(
        ",",
        both.engine().name(),
        both.plain().name(),
        both.level().where(),
        number(both.level().plain()),
        number(both.level().engine()),
        both.water().where(),
        number(both.water().plain()),
        number(both.water().engine()));
  }

  /** To a thousandth of a millimetre of level and a drop of water. */
  private static String number(double value) {
    return String.format(Locale.ROOT, "%.6f", value);
  }

  private static Line parse(String[] cells) {
    LocalDate date = LocalDate.parse(cells[0]);
    if (cells.length == COLUMNS) {
      return new Line(date, new Entry.Compared(compared(cells)));
    }
    return new Line(date, new Entry.NotCompared(cells[1], cells[2], Entry.Why.valueOf(cells[3])));
  }

  private static Comparison compared(String[] cells) {
    double[] numbers =
        Arrays.stream(new int[] {6, 7, 9, 10})
            .mapToDouble(i -> Double.parseDouble(cells[i]))
            .toArray();
    return new Comparison(
        cells[1],
        cells[2],
        Verdict.valueOf(cells[3]),
        Verdict.valueOf(cells[4]),
        Comparison.level(cells[5], numbers[0], numbers[1]),
        Comparison.water(cells[8], numbers[2], numbers[3]));
  }
}
