package dryfloor.app.report;

import dryfloor.app.text.LineBreaks;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** Columns of text, each as wide as its widest cell. Colour codes take no width. */
final class TextTable {

  private static final Pattern COLOUR_CODE = Pattern.compile("\u001b\\[[0-9;]*m");
  private static final String INDENT = "  ";

  private final List<Column> columns;
  private final List<List<String>> rows = new ArrayList<>();

  /** A column, the side on which its cells end, and how wide they may be. */
  record Column(String heading, boolean toTheRight, int widest) {

    private static final int ANY = 1000;

    static Column left(String heading) {
      return new Column(heading, false, ANY);
    }

    static Column right(String heading) {
      return new Column(heading, true, ANY);
    }

    /** Whose cells are broken between words where they are wider than this. */
    static Column broken(String heading, int widest) {
      return new Column(heading, false, widest);
    }
  }

  TextTable(Column... columns) {
    this.columns = List.of(columns);
    rows.add(this.columns.stream().map(Column::heading).toList());
  }

  void row(String... cells) {
    if (cells.length != columns.size()) {
      throw new IllegalArgumentException(
          "a row of " + cells.length + " cells in a table of " + columns.size() + " columns");
    }
    List<List<String>> broken = new ArrayList<>();
    for (int i = 0; i < cells.length; i++) {
      broken.add(broken(cells[i], columns.get(i).widest()));
    }
    int height = broken.stream().mapToInt(List::size).max().orElse(0);
    for (int line = 0; line < height; line++) {
      int number = line;
      rows.add(broken.stream().map(cell -> number < cell.size() ? cell.get(number) : "").toList());
    }
  }

  private static List<String> broken(String cell, int widest) {
    List<String> lines = LineBreaks.broken(cell, widest, TextTable::width);
    return IntStream.range(0, lines.size())
        .mapToObj(i -> i == 0 ? lines.get(i) : INDENT + lines.get(i))
        .toList();
  }

  /** The lines, headings first and in the ink of headings; a table may do without headings. */
  List<String> lines(Ink ink) {
    List<String> lines = new ArrayList<>();
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder(INDENT);
      for (int i = 0; i < row.size(); i++) {
        line.append(i == 0 ? "" : INDENT).append(padded(row.get(i), i));
      }
      String text = line.toString().stripTrailing();
      lines.add(lines.isEmpty() ? ink.faint(text) : text);
    }
    boolean headed = columns.stream().anyMatch(column -> !column.heading().isEmpty());
    return headed ? lines : lines.subList(1, lines.size());
  }

  private String padded(String cell, int column) {
    int width = rows.stream().mapToInt(row -> width(row.get(column))).max().orElse(0);
    String space = " ".repeat(width - width(cell));
    return columns.get(column).toTheRight() ? space + cell : cell + space;
  }

  private static int width(String cell) {
    String bare = COLOUR_CODE.matcher(cell).replaceAll("");
    return bare.codePointCount(0, bare.length());
  }
}
