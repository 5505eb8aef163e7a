package dryfloor.analysis.installation;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * The tables of failures on the page of a scenario: for each row the failures it speaks of, and
 * what it says of the drawing as drawn and of the corrected one. A second table tells again what
 * stays wet in the corrected one.
 */
public final class PageTable {

  private static final String BOTH = "| failure | as drawn | corrected |";
  private static final String STAYS_WET = "| failure | on the floors |";
  private static final Pattern NAME = Pattern.compile("`([^`]+)`.*");
  private static final Pattern SERIES = Pattern.compile("(.*)(\\w)…(\\w)(.*)");
  private static final Pattern LITRES =
      Pattern.compile("([\\d \\u00a0]*\\d(?:\\.\\d+)?) L on `([^`]+)`");

  private PageTable() {}

  /**
   * A row.
   *
   * @param failures ids; of several that are much alike the worst is told
   * @param cells what is said, by drawing: {@code as-drawn} and {@code corrected}, or one of them
   */
  public record Row(List<String> failures, Map<String, String> cells) {}

  /** The rows of a scenario's page. */
  public static List<Row> of(String scenario) {
    List<Row> rows = new ArrayList<>();
    String head = "";
    for (String line : lines(scenario)) {
      if (line.equals(BOTH) || line.equals(STAYS_WET)) {
        head = line;
      } else if (!line.startsWith("|")) {
        head = "";
      } else if (!head.isEmpty() && !line.startsWith("| ---")) {
        rows.add(row(head, line.split("\\|", -1)));
      }
    }
    return rows;
  }

  private static Row row(String head, String[] cells) {
    Map<String, String> told =
        head.equals(BOTH)
            ? Map.of("as-drawn", cells[2].strip(), "corrected", cells[3].strip())
            : Map.of("corrected", "wet: " + cells[2].strip());
    return new Row(failures(cells[1].strip()), told);
  }

  private static List<String> lines(String scenario) {
    try {
      return Files.readAllLines(Path.of("..", "scenarios", scenario, "README.md"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<String> failures(String cell) {
    Matcher name = NAME.matcher(cell);
    if (!name.matches()) {
      throw new AssertionError("no failure is named in: " + cell);
    }
    Matcher series = SERIES.matcher(name.group(1));
    return series.matches()
        ? IntStream.rangeClosed(series.group(2).charAt(0), series.group(3).charAt(0))
            .mapToObj(letter -> series.group(1) + (char) letter + series.group(4))
            .toList()
        : List.of(name.group(1));
  }

  /** Litres by floor that a cell tells. */
  public static Map<String, Double> litres(String cell) {
    Map<String, Double> litres = new LinkedHashMap<>();
    Matcher told = LITRES.matcher(cell);
    while (told.find()) {
      litres.put(told.group(2), Double.parseDouble(told.group(1).replaceAll("[ \\u00a0]", "")));
    }
    return litres;
  }
}
