package dryfloor.app.report;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.failure.FailureTraits;
import dryfloor.app.report.TextTable.Column;
import dryfloor.model.Installation;
import java.util.List;

/** The failures that a drawing can have. */
public final class FailureList {

  private FailureList() {}

  /** One line for each: id, name, how somebody would notice. */
  public static String of(Installation installation, List<Failure> failures, Ink ink) {
    TextTable table =
        new TextTable(
            Column.left("id"), Column.broken("failure", 50), Column.broken("how it shows", 40));
    failures.forEach(
        failure ->
            table.row(
                FailureNames.id(failure),
                FailureNames.name(failure, installation),
                FailureTraits.howNoticed(failure, installation)));
    Lines lines = new Lines(ink);
    lines.add(
        ink.heading(
            installation.name()
                + ": "
                + failures.size()
                + (failures.size() == 1 ? " failure" : " failures")));
    lines.table(table);
    return lines.text();
  }
}
