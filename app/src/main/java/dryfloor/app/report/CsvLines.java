package dryfloor.app.report;

import java.util.ArrayList;
import java.util.List;

/**
 * Reads comma-separated values as RFC 4180 has them; also such as spreadsheets of other countries
 * write, with semicolons, and with a mark of the byte order at the beginning.
 */
public final class CsvLines {

  private final String text;
  private final char separator;
  private final List<List<String>> lines = new ArrayList<>();
  private List<String> line = new ArrayList<>();
  private final StringBuilder cell = new StringBuilder();

  private CsvLines(String text) {
    this.text = text.startsWith("\uFEFF") ? text.substring(1) : text;
    String head = this.text.lines().findFirst().orElse("");
    this.separator = head.indexOf(';') >= 0 && head.indexOf(',') < 0 ? ';' : ',';
  }

  /** The cells of each line; lines without any text are left out. */
  public static List<List<String>> of(String text) {
    CsvLines reader = new CsvLines(text);
    reader.read();
    return List.copyOf(reader.lines);
  }

  private void read() {
    boolean quoted = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (quoted && c == '"' && i + 1 < text.length() && text.charAt(i + 1) == '"') {
        cell.append('"');
        i++;
      } else if (c == '"') {
        quoted = !quoted;
      } else if (quoted) {
        cell.append(c);
      } else if (c == separator) {
        endCell();
      } else if (c == '\n') {
        endLine();
      } else if (c != '\r') {
        cell.append(c);
      }
    }
    endLine();
  }

  private void endCell() {
    line.add(cell.toString().strip());
    cell.setLength(0);
  }

  private void endLine() {
    endCell();
    if (line.stream().anyMatch(text -> !text.isEmpty())) {
      lines.add(List.copyOf(line));
    }
    line = new ArrayList<>();
  }
}
