package dryfloor.app.command;

import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.rehearsal.RehearsalStep;
import dryfloor.app.paper.RehearsalCsv;
import dryfloor.app.report.CsvLines;
import dryfloor.app.report.RehearsalRecord;
import dryfloor.model.file.Problem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** A rehearsal sheet that somebody has filled in; every mistake in it is found at once. */
final class MeasuredSheet {

  /** The sheet gives the depth of an empty vessel rounded, and so does whoever fills it in. */
  private static final double ROUNDED = 0.5;

  private final List<RehearsalStep> steps;
  private final List<Problem> problems = new ArrayList<>();
  private final Map<String, List<RehearsalRecord.Level>> levels = new LinkedHashMap<>();
  private RehearsalCsv.Unit unit = RehearsalCsv.Unit.MILLIMETRES;
  private Optional<String> madeFor = Optional.empty();

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

  /** Fingerprint of the drawing for which it was made, where it says so. */
  Optional<String> madeFor() {
    return madeFor;
  }

  /** Measured levels by the id of the failure. */
  Map<String, List<RehearsalRecord.Level>> levels() {
    return levels;
  }

  private void read(List<List<String>> lines) {
    List<String> heads = lines.isEmpty() ? List.of() : lines.getFirst();
    unit =
        Arrays.stream(RehearsalCsv.Unit.values())
            .filter(one -> heads.contains(one.measured()))
            .findFirst()
            .orElse(unit);
    column(heads, RehearsalCsv.FAILURE);
    column(heads, RehearsalCsv.VESSEL);
    column(heads, unit.measured());
    if (!problems.isEmpty()) {
      return;
    }
    for (int i = 1; i < lines.size(); i++) {
      read(filledIn(i + 1, heads, lines.get(i)));
    }
    if (levels.isEmpty() && problems.isEmpty()) {
      wrong(0, "nothing is filled in", "write measured levels under " + unit.measured());
    }
  }

  /** What a line of the sheet says. */
  private record FilledIn(
      int line, String failure, String vessel, String before, String after, String by) {}

  private FilledIn filledIn(int number, List<String> heads, List<String> line) {
    madeFor =
        madeFor.or(
            () ->
                Optional.of(cell(line, heads.indexOf(RehearsalCsv.DRAWING)))
                    .filter(text -> !text.isEmpty()));
    return new FilledIn(
        number,
        cell(line, heads.indexOf(RehearsalCsv.FAILURE)),
        cell(line, heads.indexOf(RehearsalCsv.VESSEL)),
        cell(line, heads.indexOf(unit.before())),
        cell(line, heads.indexOf(unit.measured())),
        cell(line, heads.indexOf(RehearsalCsv.BY)));
  }

  private void column(List<String> heads, String name) {
    if (!heads.contains(name)) {
      wrong(1, "there is no column '" + name + "'", "fill in the sheet that 'report' writes");
    }
  }

  private static String cell(List<String> line, int column) {
    return column >= 0 && column < line.size() ? line.get(column) : "";
  }

  private void read(FilledIn said) {
    if (said.before().isEmpty() && said.after().isEmpty()) {
      return;
    }
    Optional<RehearsalStep.ExpectedLevel> expected = expected(said);
    if (expected.isEmpty()) {
      wrong(
          said.line(),
          "'"
              + said.failure()
              + "' with '"
              + said.vessel()
              + "' is not on the rehearsal sheet of this drawing",
          "a line of the sheet that 'report' writes for this drawing");
    } else if (said.after().isEmpty()) {
      wrong(
          said.line(),
          "'" + said.vessel() + "' was measured before only",
          "the level once all was still under " + unit.measured());
    } else {
      read(said, expected.get());
    }
  }

  private Optional<RehearsalStep.ExpectedLevel> expected(FilledIn said) {
    return steps.stream()
        .filter(step -> FailureNames.id(step.result().failure()).equals(said.failure()))
        .flatMap(step -> step.levels().stream())
        .filter(level -> level.vessel().equals(said.vessel()))
        .findFirst();
  }

  private void read(FilledIn said, RehearsalStep.ExpectedLevel expected) {
    OptionalDouble before =
        said.before().isEmpty()
            ? OptionalDouble.empty()
            : depth(said.line(), said.before(), expected);
    OptionalDouble after = depth(said.line(), said.after(), expected);
    List<RehearsalRecord.Level> read =
        levels.computeIfAbsent(said.failure(), id -> new ArrayList<>());
    if (read.stream().anyMatch(level -> level.vessel().equals(said.vessel()))) {
      wrong(
          said.line(),
          "'" + said.failure() + "' with '" + said.vessel() + "' is filled in twice",
          "one line");
    } else {
      after.ifPresent(
          depth -> read.add(RehearsalRecord.Level.of(expected, before, depth, said.by())));
    }
  }

  /** A depth below the rim (m); nothing where it is none, which is told. */
  private OptionalDouble depth(int line, String text, RehearsalStep.ExpectedLevel expected) {
    double deepest = (expected.rim() - expected.bottom()) / unit.metres();
    try {
      double depth = Double.parseDouble(text.replace(',', '.'));
      if (depth >= 0 && depth <= deepest + ROUNDED) {
        return OptionalDouble.of(depth * unit.metres());
      }
      wrong(
          line,
          "'" + text + "' is not in '" + expected.vessel() + "'",
          unit.words() + " below its rim, from 0 to " + Math.round(deepest));
    } catch (NumberFormatException noNumber) {
      wrong(
          line,
          "'" + text + "' is no depth below the rim",
          unit.words() + " such as " + unit.example());
    }
    return OptionalDouble.empty();
  }

  private void wrong(int line, String message, String remedy) {
    problems.add(new Problem(line, 1, unit.measured(), message, remedy));
  }
}
