package dryfloor.analysis.plain;

import dryfloor.analysis.outcome.Verdict;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * The full comparison as a dated file, because it takes hours: a line for each failure. Whoever
 * runs a scenario again replaces its lines.
 */
final class ComparisonRecord {

  static final Path FILE =
      Path.of("src", "test", "resources", "dryfloor", "analysis", "plain", "comparison.csv");

  private static final String HEAD =
      "date,scenario,failure,engine,plain,level at,level plain (m),level engine (m),"
          + "water at,water plain (m3),water engine (m3)";
  private static final int COLUMNS = 11;

  /** A line: what was found, and when. */
  record Line(LocalDate date, Entry entry) {}

  private ComparisonRecord() {}

  static List<Line> read() {
    try {
      return Files.readAllLines(FILE).stream().skip(1).map(ComparisonRecord::parse).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Writes what was found today about a scenario in place of what was known of it. */
  static void renew(String scenario, List<Entry> entries) throws IOException {
    List<String> lines = new ArrayList<>(List.of(HEAD));
    if (Files.exists(FILE)) {
      Files.readAllLines(FILE).stream()
          .skip(1)
          .filter(line -> !line.split(",", -1)[1].equals(scenario))
          .forEach(lines::add);
    }
    LocalDate today = LocalDate.now(ZoneOffset.UTC);
    entries.forEach(entry -> lines.add(write(today, entry)));
    lines.subList(1, lines.size()).sort((a, b) -> scenarioOf(a).compareTo(scenarioOf(b)));
    Files.createDirectories(FILE.getParent());
    Files.write(FILE, lines);
  }

  private static String scenarioOf(String line) {
    return line.split(",", -1)[1];
  }

  private static String write(LocalDate date, Entry entry) {
    String start = date + "," + entry.scenario() + "," + entry.failure() + ",";
    return switch (entry) {
      case Entry.NotCompared not -> start + not.why();
      case Entry.Compared compared -> start + write(compared.comparison());
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

  private static Line parse(String line) {
    String[] cells = line.split(",", -1);
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
