package dryfloor.app.report;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.together.CutSet;
import dryfloor.analysis.together.CutSetResult;
import dryfloor.analysis.together.PairAnswer;
import dryfloor.app.report.TextTable.Column;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** The smallest sets of failures that wet a floor. */
public final class CutSetsReport {

  /** So many sets of a size are told; the JSON has all. */
  private static final int TOLD = 40;

  /** So many failures are counted that are in the most sets. */
  private static final int COUNTED = 10;

  private final Wording wording;
  private final CutSetResult found;
  private final Lines lines;

  private CutSetsReport(Wording wording, CutSetResult found, Ink ink) {
    this.wording = wording;
    this.found = found;
    this.lines = new Lines(ink);
  }

  /** The whole report but for what everybody must take care of. */
  public static String of(CutSetResult found, Wording wording, Ink ink) {
    CutSetsReport report = new CutSetsReport(wording, found, ink);
    report.head();
    report.size(1, "One is enough");
    report.size(2, "Two together");
    report.size(3, "Three together");
    report.shared();
    report.unanswered();
    report.howKnown();
    return report.lines.text();
  }

  private void head() {
    lines.add(lines.ink().heading(wording.installation().name()));
    int failures = found.failures();
    if (found.sets().isEmpty()) {
      lines.paragraph("", "No three of " + failures + " failures are known to wet a floor.");
    } else {
      lines.paragraph(
          "",
          "The smallest sets of "
              + failures
              + " failures that wet a floor, up to three at once: "
              + Sentences.enumerate(
                  List.of(
                      found.ofSize(1).size() + " of one",
                      found.ofSize(2).size() + " of two",
                      found.ofSize(3).size() + " of three"))
              + ". In each all are needed: without any one of them every floor stays dry.");
    }
  }

  private void size(int size, String heading) {
    List<CutSet> sets = found.ofSize(size);
    if (sets.isEmpty()) {
      return;
    }
    lines.heading(heading + ", most water first");
    int number = 1;
    for (CutSet set : sets.subList(0, Math.min(TOLD, sets.size()))) {
      String head = "%3d  ".formatted(number++);
      lines.paragraph(head, " ".repeat(head.length()), sentence(set));
    }
    if (sets.size() > TOLD) {
      lines.add("     and " + (sets.size() - TOLD) + " more; --json has them all.");
    }
  }

  private String sentence(CutSet set) {
    TogetherWords words = new TogetherWords(wording);
    String when = words.when(set.outcome());
    return set.failures().stream().map(this::name).collect(Collectors.joining(" + "))
        + ": "
        + words.water(set.outcome())
        + (when.isEmpty() || when.equals("at once")
            ? " at once."
            : ", the first after " + when + ".");
  }

  /** Who mends one of these breaks most sets at once. */
  private void shared() {
    List<Failure> failures =
        found.sets().stream()
            .flatMap(set -> set.failures().stream())
            .distinct()
            .filter(failure -> together(failure) > 1)
            .sorted(Comparator.comparingLong(failure -> -together(failure)))
            .limit(COUNTED)
            .toList();
    if (failures.isEmpty()) {
      return;
    }
    lines.heading("In most sets of two and three: keeping these from failing breaks them");
    TextTable table = new TextTable(Column.broken("failure", 60), Column.right("sets"));
    for (Failure failure : failures) {
      table.row(name(failure), Long.toString(together(failure)));
    }
    lines.table(table);
  }

  private long together(Failure failure) {
    return found.sets().stream()
        .filter(set -> set.failures().size() > 1 && set.failures().contains(failure))
        .count();
  }

  private void unanswered() {
    if (found.unanswered().isEmpty()) {
      return;
    }
    lines.heading("No answer, which never counts as dry");
    NoAnswerWords words = new NoAnswerWords(wording);
    for (CutSetResult.Open open :
        found.unanswered().subList(0, Math.min(TOLD, found.unanswered().size()))) {
      lines.paragraph(
          "  ",
          "    ",
          open.failures().stream().map(this::name).collect(Collectors.joining(", with "))
              + ": "
              + words.reason(open.reason()));
    }
    if (found.unanswered().size() > TOLD) {
      lines.add("  and " + (found.unanswered().size() - TOLD) + " more");
    }
  }

  private void howKnown() {
    int pairs = found.pairs().of(PairAnswer.Unanswered.class).size();
    lines.blank();
    lines.paragraph(
        "",
        "Sets of three whose pairs are all dry: "
            + found.threes()
            + "; "
            + found.simulated()
            + " were simulated together, in the others one has nothing to do with what the other"
            + " two do."
            + (pairs == 0
                ? ""
                : " Pairs without an answer: " + pairs + "; no set of three holds one of them."));
    lines.paragraph(
        "",
        "Smallest sets are meant as the minimal cut sets of fault-tree practice (NUREG-0492). They"
            + " say what is possible, not how often it happens.");
  }

  private String name(Failure failure) {
    return FailureNames.name(failure, wording.installation());
  }
}
