package dryfloor.app.paper;

import dryfloor.app.report.CsvTable;

/** The failure-mode worksheet as comma-separated values, formulas made harmless. */
public final class WorksheetCsv {

  private WorksheetCsv() {}

  /** The text of the file: a line of heads, then one line for each failure mode. */
  public static String of(Report report) {
    CsvTable table = new CsvTable();
    table.texts(WorksheetRow.COLUMNS.toArray(String[]::new));
    report.worksheet().rows().forEach(row -> table.texts(row.cells().toArray(String[]::new)));
    return table.all();
  }
}
