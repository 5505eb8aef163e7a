package dryfloor.app.command;

import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.rehearsal.RehearsalStep;
import dryfloor.app.paper.RehearsalCsv;
import dryfloor.app.report.CsvLines;
import dryfloor.app.report.RehearsalRecord;
import dryfloor.model.file.Problem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A rehearsal sheet that somebody has filled in; every mistake in it is found at once. */
final class MeasuredSheet {

  private static final double MM = 1e-3;

  private final List<RehearsalStep> steps;
  private final List<Problem> problems = new ArrayList<>();
  private final Map<String, List<RehearsalRecord.Level>> levels = new LinkedHashMap<>();

  private MeasuredSheet(List<RehearsalStep> steps) {
    this.steps = steps;
  }

  /** What a sheet says that was made for these rehearsals. */
  static MeasuredSheet of(String text, List<RehearsalStep> steps) {
    MeasuredSheet sheet = new MeasuredSheet(steps);
    sheet.read(CsvLines.of(text));
    return sheet;
  }

  /** What is wrong with it. */
  List<Problem> problems() {
    return List.copyOf(problems);
  }

  /** Measured levels by the id of the failure. */
  Map<String, List<RehearsalRecord.Level>> levels() {
    return levels;
  }

  private void read(List<List<String>> lines) {
    List<String> heads = lines.isEmpty() ? List.of() : lines.getFirst();
    int failure = column(heads, RehearsalCsv.FAILURE);
    int vessel = column(heads, RehearsalCsv.VESSEL);
    int measured = column(heads, RehearsalCsv.MEASURED);
    if (!problems.isEmpty()) {
      return;
    }
    int by = heads.indexOf(RehearsalCsv.BY);
    for (int i = 1; i < lines.size(); i++) {
      String value = cell(lines.get(i), measured);
      if (!value.isEmpty()) {
        read(
            i + 1,
            cell(lines.get(i), failure),
            cell(lines.get(i), vessel),
            value,
            cell(lines.get(i), by));
      }
    }
    if (levels.isEmpty() && problems.isEmpty()) {
      wrong(0, "nothing is filled in", "write measured levels under " + RehearsalCsv.MEASURED);
    }
  }

  private int column(List<String> heads, String name) {
    int column = heads.indexOf(name);
    if (column < 0) {
      wrong(1, "there is no column '" + name + "'", "fill in the sheet that 'report' writes");
    }
    return column;
  }

  private static String cell(List<String> line, int column) {
    return column >= 0 && column < line.size() ? line.get(column) : "";
  }

  private void read(int line, String failure, String vessel, String value, String by) {
    Optional<RehearsalStep.ExpectedLevel> expected =
        steps.stream()
            .filter(step -> FailureNames.id(step.result().failure()).equals(failure))
            .flatMap(step -> step.levels().stream())
            .filter(level -> level.vessel().equals(vessel))
            .findFirst();
    if (expected.isEmpty()) {
      wrong(
          line,
          "'" + failure + "' with '" + vessel + "' is not on the rehearsal sheet of this drawing",
          "a line of the sheet that 'report' writes for this drawing");
      return;
    }
    try {
      double depth = Double.parseDouble(value.replace(',', '.'));
      double deepest = (expected.get().rim() - expected.get().bottom()) / MM;
      List<RehearsalRecord.Level> read = levels.computeIfAbsent(failure, id -> new ArrayList<>());
      if (!(depth >= 0 && depth <= deepest)) {
        wrong(
            line,
            "'" + value + "' is not in '" + vessel + "'",
            "millimetres below its rim, from 0 to " + Math.round(deepest));
      } else if (read.stream().anyMatch(level -> level.vessel().equals(vessel))) {
        wrong(line, "'" + failure + "' with '" + vessel + "' is filled in twice", "one line");
      } else {
        read.add(
            new RehearsalRecord.Level(
                vessel, expected.get().rim() - expected.get().expected(), depth * MM, by));
      }
    } catch (NumberFormatException noNumber) {
      wrong(line, "'" + value + "' is no depth below the rim", "millimetres such as 203");
    }
  }

  private void wrong(int line, String message, String remedy) {
    problems.add(new Problem(line, 1, RehearsalCsv.MEASURED, message, remedy));
  }
}
