package dryfloor.app.report;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.failure.FailureTraits;
import dryfloor.analysis.together.PairAnswer;
import dryfloor.analysis.together.PairMatrix;
import dryfloor.analysis.together.PairResult;
import dryfloor.analysis.together.Protection;
import dryfloor.app.report.TextTable.Column;
import java.util.ArrayList;
import java.util.List;

/** Which two failures wet a floor together, and what each protection alone stands between. */
public final class PairsReport {

  /** So many pairs are told in the table; the matrix shows all. */
  private static final int TOLD = 40;

  private final Wording wording;
  private final PairResult pairs;
  private final List<PairAnswer.Together> wet;
  private final Lines lines;

  private PairsReport(Wording wording, PairResult pairs, Ink ink) {
    this.wording = wording;
    this.pairs = pairs;
    this.wet = pairs.newlyWet();
    this.lines = new Lines(ink);
  }

  /** The whole report but for what everybody must take care of. */
  public static String of(PairResult pairs, Wording wording, Ink ink) {
    PairsReport report = new PairsReport(wording, pairs, ink);
    report.head();
    report.table();
    report.protections();
    report.matrix();
    report.unanswered();
    report.howKnown();
    return report.lines.text();
  }

  private void head() {
    lines.add(lines.ink().heading(wording.installation().name()));
    lines.paragraph("", asked() + ": " + count(pairs.answers().size(), "pair") + ".");
    lines.paragraph("", finding());
    long alone = Tally.of(pairs.alone().results()).of(Answer.WET);
    if (alone > 0) {
      lines.paragraph(
          "",
          count(alone, "failure")
              + (alone == 1 ? " wets" : " wet")
              + " a floor alone ('dryfloor check FILE') and must be mended first"
              + pairsWithThem(alone)
              + ".");
    }
  }

  private String pairsWithThem(long wetAlone) {
    int with = pairs.of(PairAnswer.WetAlone.class).size();
    return with == 0
        ? ""
        : "; "
            + count(with, "pair")
            + " with "
            + (wetAlone == 1 ? "it" : "one of them")
            + (with == 1 ? " tells" : " tell")
            + " nothing more";
  }

  private String asked() {
    return switch (pairs.scope()) {
      case HIDDEN_WITH_POWER ->
          count(hidden(), "hidden failure") + " with everything that can happen to the power";
      case HIDDEN_WITH_ANY_EVENT ->
          count(hidden(), "hidden failure") + " with every failure that shows at once";
      case EVERY_TWO -> "Every two of " + count(pairs.failures().size(), "failure");
    };
  }

  private long hidden() {
    return pairs.failures().stream()
        .filter(failure -> FailureTraits.isHidden(failure, wording.installation()))
        .count();
  }

  private String finding() {
    return wet.isEmpty()
        ? "No pair wets a floor that stays dry after each of the two alone."
        : count(wet.size(), "pair")
            + (wet.size() == 1 ? " wets" : " wet")
            + " a floor though neither failure does so alone.";
  }

  private static String count(long number, String what) {
    return number + " " + what + (number == 1 ? "" : "s");
  }

  private void table() {
    if (wet.isEmpty()) {
      return;
    }
    lines.heading("Wet only together, most water first");
    TextTable table =
        new TextTable(
            Column.broken("failure", 38),
            Column.broken("together with", 38),
            Column.broken("water", 30),
            Column.right("when"));
    wet.stream().limit(TOLD).forEach(pair -> row(table, pair));
    lines.table(table);
    if (wet.size() > TOLD) {
      lines.add("  and " + (wet.size() - TOLD) + " more; --json has them all.");
    }
    lines.blank();
    lines.paragraph(
        "",
        "When: the first wet floor, counted from the moment of both. 'dryfloor tell FILE FAILURE"
            + " --and FAILURE' tells a pair in full.");
  }

  private void row(TextTable table, PairAnswer.Together pair) {
    TogetherWords words = new TogetherWords(wording);
    table.row(
        name(pair.pair().first()),
        name(pair.pair().second()),
        words.water(pair.outcome()),
        words.when(pair.outcome()));
  }

  private void protections() {
    List<Protection> protections = pairs.protections();
    if (protections.isEmpty()) {
      return;
    }
    lines.heading("Nobody notices these, and they alone decide: test them");
    for (Protection protection : protections) {
      lines.paragraph(
          "  ",
          "    ",
          name(protection.failure())
              + ": then "
              + (protection.events().size() == 1 ? "this wets" : "these wet")
              + " a floor and otherwise "
              + (protection.events().size() == 1 ? "does" : "do")
              + " not:");
      for (PairAnswer.Together event : protection.events()) {
        lines.paragraph(
            "    - ",
            "      ",
            name(event.pair().otherThan(protection.failure()))
                + " ("
                + wording.amounts().volume(event.outcome().reachedFloors())
                + ")");
      }
    }
  }

  private void matrix() {
    PairMatrix telling = pairs.matrix().telling();
    if (telling.rows().isEmpty()) {
      return;
    }
    lines.heading("The pairs as a picture, without rows and columns in which nothing new gets wet");
    new MatrixSection(wording, lines).write(telling);
  }

  private void unanswered() {
    List<PairAnswer.Unanswered> open = pairs.of(PairAnswer.Unanswered.class);
    if (open.isEmpty()) {
      return;
    }
    lines.heading("No answer, which never counts as dry");
    NoAnswerWords words = new NoAnswerWords(wording);
    open.stream()
        .limit(TOLD)
        .forEach(
            pair ->
                lines.paragraph(
                    "  ",
                    "    ",
                    name(pair.pair().first())
                        + ", with "
                        + name(pair.pair().second())
                        + ": "
                        + words.reason(pair.reason())));
    if (open.size() > TOLD) {
      lines.add("  and " + (open.size() - TOLD) + " more");
    }
  }

  /** How many were simulated and why the others need not be. */
  private void howKnown() {
    List<String> ways = new ArrayList<>();
    ways.add(pairs.of(PairAnswer.Together.class).size() + " simulated together");
    add(
        ways,
        PairAnswer.AsOneAlone.class,
        "in which one changes nothing in the course of the other");
    add(ways, PairAnswer.Apart.class, "in which nothing depends on both");
    add(ways, PairAnswer.WetAlone.class, "with one that wets a floor alone");
    add(ways, PairAnswer.Excluded.class, "of which only one can be");
    lines.blank();
    lines.paragraph("", "Pairs: " + Sentences.enumerate(ways) + ".");
  }

  private <A extends PairAnswer> void add(List<String> ways, Class<A> kind, String why) {
    int many = pairs.of(kind).size();
    if (many > 0) {
      ways.add(many + " " + why);
    }
  }

  private String name(Failure failure) {
    return FailureNames.name(failure, wording.installation());
  }
}
