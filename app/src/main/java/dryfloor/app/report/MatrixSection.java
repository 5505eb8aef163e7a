package dryfloor.app.report;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.together.PairMatrix;
import dryfloor.app.report.TextTable.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Pairs as a picture of signs: failures in rows, numbered ones in columns, a key below. */
final class MatrixSection {

  /** More columns than this go into a picture of their own. */
  private static final int COLUMNS = 16;

  private static final int NAME = 44;

  private final Wording wording;
  private final Lines lines;

  MatrixSection(Wording wording, Lines lines) {
    this.wording = wording;
    this.lines = lines;
  }

  void write(PairMatrix matrix) {
    List<Failure> columns = matrix.columns();
    for (int from = 0; from < columns.size(); from += COLUMNS) {
      int to = Math.min(columns.size(), from + COLUMNS);
      lines.blank();
      lines.table(block(matrix, from, to));
      for (int column = from; column < to; column++) {
        lines.paragraph("  ", "      ", number(column) + "  " + name(columns.get(column)));
      }
    }
    lines.blank();
    lines.paragraph("", key(matrix));
  }

  private TextTable block(PairMatrix matrix, int from, int to) {
    List<Column> headings = new ArrayList<>(List.of(Column.broken("", NAME)));
    for (int column = from; column < to; column++) {
      headings.add(Column.right(number(column)));
    }
    TextTable table = new TextTable(headings.toArray(Column[]::new));
    for (Failure row : matrix.rows()) {
      List<String> cells = new ArrayList<>(List.of(name(row)));
      matrix.columns().subList(from, to).forEach(column -> cells.add(cell(matrix, row, column)));
      table.row(cells.toArray(String[]::new));
    }
    return table;
  }

  private String cell(PairMatrix matrix, Failure row, Failure column) {
    return matrix.at(row, column).map(answer -> PairSign.of(answer).sign(lines.ink())).orElse("");
  }

  private String key(PairMatrix matrix) {
    return matrix.rows().stream()
            .flatMap(row -> signs(matrix, row))
            .distinct()
            .sorted()
            .map(sign -> sign.sign(lines.ink()) + " " + sign.meaning())
            .collect(Collectors.joining("; "))
        + ".";
  }

  private static Stream<PairSign> signs(PairMatrix matrix, Failure row) {
    return matrix.columns().stream()
        .flatMap(column -> matrix.at(row, column).stream())
        .map(PairSign::of);
  }

  private static String number(int column) {
    return Integer.toString(column + 1);
  }

  private String name(Failure failure) {
    return FailureNames.name(failure, wording.installation());
  }
}
