package dryfloor.analysis.logbook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * What takes hours to find out, as a file: a line for each failure of a scenario, with the day on
 * which it was found. The cells of a line are the day, the scenario, the failure, and what was
 * found.
 *
 * @param file that keeps it
 * @param head its first line, with the names of the cells
 */
public record Logbook(Path file, String head) {

  /** The cells of every line. */
  public List<String[]> read() {
    try {
      return Files.readAllLines(file).stream().skip(1).map(Logbook::cells).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Writes what was found today about a scenario in place of what was known of it.
   *
   * @param found the failure and what was found, as they stand in a line
   */
  public void renew(String scenario, List<String> found) throws IOException {
    LocalDate today = LocalDate.now(ZoneOffset.UTC);
    write(scenario, found.stream().map(line -> today + "," + scenario + "," + line));
  }

  private void write(String scenario, Stream<String> found) throws IOException {
    Stream<String> others =
        Files.exists(file)
            ? Files.readAllLines(file).stream()
                .skip(1)
                .filter(line -> !cells(line)[1].equals(scenario))
            : Stream.empty();
    List<String> lines = new ArrayList<>(List.of(head));
    Stream.concat(others, found)
        .sorted(Comparator.comparing(line -> cells(line)[1]))
        .forEach(lines::add);
    Files.createDirectories(file.getParent());
    Files.write(file, lines);
  }

  /** Writes what was found today about some failures of a scenario in place of their lines. */
  public void renewSome(String scenario, List<String> found) throws IOException {
    Map<String, String> byFailure = new LinkedHashMap<>();
    read().stream()
        .filter(cells -> cells[1].equals(scenario))
        .forEach(cells -> byFailure.put(cells[2], String.join(",", cells)));
    LocalDate today = LocalDate.now(ZoneOffset.UTC);
    for (String line : found) {
      byFailure.put(cells(line)[0], today + "," + scenario + "," + line);
    }
    write(scenario, byFailure.values().stream());
  }

  private static String[] cells(String line) {
    return line.split(",", -1);
  }
}
