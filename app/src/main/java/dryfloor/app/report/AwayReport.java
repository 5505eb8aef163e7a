package dryfloor.app.report;

import dryfloor.analysis.absence.AbsenceResult;
import dryfloor.analysis.absence.GuardsAtWork;
import dryfloor.analysis.absence.GuardsAtWork.Worth;
import dryfloor.analysis.absence.LeftAlone;
import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.app.report.TextTable.Column;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What becomes of an installation while nobody is there, for its owner. */
public final class AwayReport {

  /** Names are broken at this width, so that figures keep their columns. */
  private static final int NAME = 44;

  private final Wording wording;
  private final AbsenceResult absences;
  private final Lines lines;

  private AwayReport(AbsenceResult absences, Wording wording, Ink ink) {
    this.absences = absences;
    this.wording = wording;
    this.lines = new Lines(ink);
  }

  /** The whole report but for what everybody must take care of. */
  public static String of(AbsenceResult absences, Wording wording, Ink ink) {
    AwayReport report = new AwayReport(absences, wording, ink);
    report.head();
    report.worst();
    report.hours();
    report.guards();
    report.unknown();
    return report.lines.text();
  }

  private void head() {
    lines.add(lines.ink().heading(wording.installation().name()));
    int wet = absences.wet().size();
    lines.paragraph(
        "",
        count(absences.failures().size(), "failure")
            + ", each just after you have left. Nobody is there, nobody acts. "
            + (wet == 0 && absences.unknown().isEmpty()
                ? "None wets a floor within " + longest() + "."
                : wet + (wet == 1 ? " wets" : " wet") + " a floor within " + longest() + "."));
  }

  private String longest() {
    return time(absences.times().getLast());
  }

  private void worst() {
    lines.heading("If you are away for so long, the worst by then");
    TextTable table =
        new TextTable(
            Column.right("away"),
            Column.right("wet after"),
            Column.broken("the worst", NAME),
            Column.right("water on floors"));
    for (double time : absences.times()) {
      table.row(
          time(time),
          absences.wetBy(time) + " of " + absences.failures().size(),
          absences.worstBy(time).map(worst -> name(worst.failure())).orElse("every floor is dry"),
          absences.worstBy(time).map(worst -> onFloors(worst, time)).orElse(""));
    }
    lines.table(table);
  }

  private void hours() {
    if (absences.wet().isEmpty()) {
      return;
    }
    lines.heading("How long until a floor is wet, and how much is on floors by then");
    List<Column> columns = new ArrayList<>(List.of(Column.right("first wet")));
    absences.times().forEach(time -> columns.add(Column.right(time(time))));
    columns.add(Column.broken("failure", NAME));
    TextTable table = new TextTable(columns.toArray(Column[]::new));
    for (LeftAlone.Known failure : absences.wet()) {
      List<String> row = new ArrayList<>(List.of(first(failure.firstWet().getAsDouble())));
      absences.times().forEach(time -> row.add(onFloors(failure, time)));
      row.add(name(failure.failure()));
      table.row(row.toArray(String[]::new));
    }
    lines.table(table);
  }

  private String onFloors(LeftAlone.Known failure, double time) {
    return failure.isWetBy(time)
        ? wording.amounts().volume(failure.onFloors().get(absences.times().indexOf(time)))
        : "dry";
  }

  private String first(double time) {
    return time < VerdictSentence.AT_ONCE ? "at once" : time(time);
  }

  /** A failure after which something acted, and what that was worth. */
  private record Acted(Failure failure, GuardsAtWork.Compared guards) {}

  private void guards() {
    List<Acted> acted =
        absences.known().stream()
            .flatMap(
                known ->
                    known.guards().stream()
                        .filter(GuardsAtWork.Compared.class::isInstance)
                        .map(guards -> (GuardsAtWork.Compared) guards)
                        .map(guards -> new Acted(known.failure(), guards)))
            .toList();
    boolean any = absences.known().stream().anyMatch(known -> known.guards().isPresent());
    lines.heading("What acts by itself meanwhile, and what it is worth");
    if (!any) {
      lines.paragraph(
          "  ",
          "No leak sensor, high-water stop, low-water stop or timer acts after any of these.");
      return;
    }
    List<Acted> telling =
        acted.stream()
            .filter(each -> each.guards().worth() != Worth.NO_DIFFERENCE)
            .sorted(
                Comparator.comparing((Acted each) -> each.guards().worth() == Worth.SAVES)
                    .thenComparingDouble(each -> -Math.abs(each.guards().saves())))
            .toList();
    if (!telling.isEmpty()) {
      TextTable table =
          new TextTable(
              Column.broken("failure", NAME),
              Column.broken("what acts", 20),
              Column.right("with it"),
              Column.right("without"),
              Column.left("so it"));
      telling.forEach(each -> row(table, each));
      lines.table(table);
      lines.blank();
    }
    same(acted);
    notKnown();
  }

  private void row(TextTable table, Acted acted) {
    GuardsAtWork.Compared guards = acted.guards();
    table.row(
        name(acted.failure()),
        names(guards.acted()),
        wording.amounts().tabled(guards.with()),
        wording.amounts().tabled(guards.without()),
        guards.worth() == Worth.SAVES
            ? "saves " + wording.amounts().volume(guards.saves())
            : "makes it worse: " + wording.amounts().volume(-guards.saves()) + " more");
  }

  private void same(List<Acted> acted) {
    List<Acted> same =
        acted.stream().filter(each -> each.guards().worth() == Worth.NO_DIFFERENCE).toList();
    long dry = same.stream().filter(each -> each.guards().firstWetWith().isEmpty()).count();
    if (!same.isEmpty()) {
      lines.paragraph(
          "  ",
          "Something acts and makes no difference to the floors after "
              + count(same.size(), "failure")
              + ", "
              + dry
              + " of which leave every floor dry anyhow. --json names them.");
    }
  }

  private void notKnown() {
    for (LeftAlone.Known known : absences.known()) {
      if (known.guards().orElse(null) instanceof GuardsAtWork.NotKnown open) {
        lines.paragraph(
            "  ",
            "    ",
            name(known.failure())
                + ": what "
                + names(open.acted())
                + " is worth has no answer: "
                + new NoAnswerWords(wording).reason(open.reason()));
      }
    }
  }

  private void unknown() {
    if (absences.unknown().isEmpty()) {
      return;
    }
    lines.heading("No answer, which never counts as dry");
    NoAnswerWords words = new NoAnswerWords(wording);
    for (LeftAlone.Unknown open : absences.unknown()) {
      lines.paragraph("  ", "    ", name(open.failure()) + ": " + words.reason(open.reason()));
    }
  }

  private String names(List<String> controls) {
    return Sentences.enumerate(controls.stream().map(wording.names()::small).toList());
  }

  private String name(Failure failure) {
    return FailureNames.name(failure, wording.installation());
  }

  private String time(double seconds) {
    return wording.amounts().time(seconds);
  }

  private static String count(long number, String what) {
    return number + " " + what + (number == 1 ? "" : "s");
  }
}
