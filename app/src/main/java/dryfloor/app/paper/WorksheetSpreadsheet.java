package dryfloor.app.paper;

import dryfloor.model.file.VisibleText;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/**
 * The failure-mode worksheet as a spreadsheet (Office Open XML). Every cell is a text or a number,
 * none is a formula, whatever a name looks like, and none has a mark in it that turns its
 * direction.
 */
public final class WorksheetSpreadsheet {

  /** Widths of the columns (letters). */
  private static final List<Integer> WIDTHS =
      List.of(9, 18, 26, 30, 28, 34, 46, 13, 26, 24, 38, 30);

  private static final String SHEET = "Failure modes";

  private WorksheetSpreadsheet() {}

  /** The bytes of the file. */
  public static byte[] of(Report report) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (Workbook book = new Workbook(bytes, "Dryfloor", "1.0")) {
      failureModes(book.newWorksheet(SHEET), report);
      about(book.newWorksheet("About"), report);
    }
    return bytes.toByteArray();
  }

  private static void failureModes(Worksheet sheet, Report report) {
    for (int column = 0; column < WorksheetRow.COLUMNS.size(); column++) {
      sheet.value(0, column, WorksheetRow.COLUMNS.get(column));
      sheet.width(column, WIDTHS.get(column));
    }
    int last = WorksheetRow.COLUMNS.size() - 1;
    sheet.range(0, 0, 0, last).style().bold().wrapText(true).set();
    sheet.freezePane(0, 1);
    sheet.repeatRows(0);
    sheet.pageOrientation("landscape");
    sheet.fitToWidth((short) 1);
    sheet.fitToHeight((short) 0);
    int line = 1;
    for (WorksheetRow row : report.worksheet().rows()) {
      write(sheet, line, row);
      line++;
    }
    if (line > 1) {
      sheet.range(1, 0, line - 1, last).style().wrapText(true).verticalAlignment("top").set();
      sheet.setAutoFilter(0, 0, line - 1, last);
    }
  }

  private static void write(Worksheet sheet, int line, WorksheetRow row) {
    List<String> cells = row.cells();
    for (int column = 0; column < cells.size(); column++) {
      String cell = cells.get(column);
      if (column == 0 && cell.matches("[1-5]")) {
        sheet.value(line, column, Integer.parseInt(cell));
      } else {
        sheet.value(line, column, VisibleText.withoutTurns(cell));
      }
    }
  }

  private static void about(Worksheet sheet, Report report) {
    List<List<String>> lines =
        List.of(
            List.of("Installation", report.drawing().name()),
            List.of("Drawing", report.drawing().file()),
            List.of("Fingerprint (SHA-256)", report.drawing().fingerprint()),
            List.of("Date", report.drawing().date()),
            List.of("Program", report.drawing().program()),
            List.of("Nobody there for", report.drawing().away()),
            List.of("Form", "in the terms of IEC 60812"),
            List.of("What it is", report.statement()));
    sheet.width(0, 24);
    sheet.width(1, 90);
    int line = 0;
    for (List<String> pair : lines) {
      sheet.value(line, 0, pair.getFirst());
      sheet.value(line, 1, VisibleText.withoutTurns(pair.getLast()));
      line++;
    }
    for (Report.Step step : report.worksheet().scale()) {
      sheet.value(line, 0, "Severity " + step.number());
      sheet.value(line, 1, step.meaning());
      line++;
    }
    sheet.range(0, 0, line - 1, 1).style().wrapText(true).verticalAlignment("top").set();
  }
}
