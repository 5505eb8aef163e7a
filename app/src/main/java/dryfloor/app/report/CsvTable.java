package dryfloor.app.report;

import dryfloor.model.file.VisibleText;
import java.util.Arrays;
import java.util.Locale;

/**
 * Comma-separated values as RFC 4180 has them. Text that a spreadsheet would take for a formula is
 * made harmless with an apostrophe, and marks that turn the direction of what follows are spelled
 * out: names come from files that somebody else may have written.
 */
public final class CsvTable {

  private static final String FORMULA_SIGNS = "=+-@\t\r";

  private final StringBuilder csv = new StringBuilder();

  /** A line of texts. */
  public void texts(String... cells) {
    line(Arrays.stream(cells).map(CsvTable::text).toArray(String[]::new));
  }

  /** A line of cells made by {@link #text} and {@link #number}. */
  public void line(String... cells) {
    csv.append(String.join(",", cells)).append("\r\n");
  }

  void emptyLine() {
    csv.append("\r\n");
  }

  /** The whole text. */
  public String all() {
    return csv.toString();
  }

  /** A text as a cell. */
  public static String text(String text) {
    String seen = VisibleText.withoutTurns(text);
    boolean formula = !seen.isEmpty() && FORMULA_SIGNS.indexOf(seen.charAt(0)) >= 0;
    String safe = formula ? "'" + seen : seen;
    boolean plain = safe.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
    return plain ? safe : "\"" + safe.replace("\"", "\"\"") + "\"";
  }

  /** A number with so many digits behind the point; the point is a point in every country. */
  public static String number(double value, int digits) {
    String text = String.format(Locale.ROOT, "%." + digits + "f", value);
    return text.matches("-0(\\.0+)?") ? text.substring(1) : text;
  }
}
