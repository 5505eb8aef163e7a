package dryfloor.app.report;

import dryfloor.analysis.outcome.Note;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.app.report.TextTable.Column;
import java.util.List;

/** One outcome in full. */
public final class TellReport {

  private final Wording wording;
  private final Outcome outcome;
  private final Lines lines;

  private TellReport(Wording wording, Outcome outcome, Ink ink) {
    this.wording = wording;
    this.outcome = outcome;
    this.lines = new Lines(ink);
  }

  /**
   * The whole report.
   *
   * @param title name of the failure, or that all is well
   */
  public static String of(String title, Outcome outcome, Wording wording, Ink ink) {
    TellReport report = new TellReport(wording, outcome, ink);
    report.head(title);
    StorySection.write(wording, outcome, report.lines);
    LevelSection.write(wording, outcome, report.lines);
    PlaceSection.write(wording, outcome, report.lines);
    report.times();
    LedgerSection.write(wording, outcome, report.lines);
    report.notes();
    CareSection.write(List.of(wording), report.lines);
    return report.lines.text();
  }

  /** The report where the simulation gave up. */
  public static String withoutAnswer(String title, String reason, Wording wording, Ink ink) {
    Lines lines = new Lines(ink);
    title(title, wording, lines);
    NoAnswerWords words = new NoAnswerWords(wording);
    lines.add(ink.answer(Answer.NO_ANSWER));
    lines.paragraph("", "The simulation was given up: " + words.reason(reason) + ".");
    lines.heading("What you can do");
    words.advice(reason).forEach(advice -> lines.paragraph("  ", "    ", advice));
    return lines.text();
  }

  /** The report on a failure that the drawing switches off. */
  public static String skipped(String title, String reason, Wording wording, Ink ink) {
    Lines lines = new Lines(ink);
    title(title, wording, lines);
    lines.add(ink.answer(Answer.SKIPPED));
    lines.paragraph("", "The drawing switches it off: " + reason);
    return lines.text();
  }

  private static void title(String title, Wording wording, Lines lines) {
    lines.add(lines.ink().heading(wording.installation().name()));
    lines.add(lines.ink().heading(title));
  }

  private void head(String title) {
    title(title, wording, lines);
    lines.add(lines.ink().answer(Answer.of(outcome)));
    lines.paragraph("", Sentences.capital(new VerdictSentence(wording).explanation(outcome)));
    List<Note.SettlesElsewhere> itself = SettledLevels.ofNormal(outcome);
    SettledLevels.write(
        wording, itself.isEmpty() ? SettledLevels.before(wording, outcome) : itself, lines);
    AsDrawn.sentence(wording.installation()).ifPresent(text -> lines.paragraph("", text));
  }

  private void times() {
    lines.heading("Times");
    TextTable table = new TextTable(Column.left(""), Column.left(""));
    Amounts amounts = wording.amounts();
    table.row(
        "first spill",
        outcome.firstSpill().isPresent()
            ? amounts.time(outcome.firstSpill().getAsDouble())
            : "never");
    table.row(
        "first wet floor",
        outcome.firstWetFloor().isPresent()
            ? amounts.time(outcome.firstWetFloor().getAsDouble())
            : "never");
    table.row("the end", EndingPhrase.of(wording, outcome));
    outcome
        .dryPumps()
        .forEach(
            dry ->
                table.row(
                    wording.names().small(dry.pump()) + " runs dry", amounts.time(dry.time())));
    lines.table(table);
  }

  /** Levels that settle elsewhere stand at the head already. */
  private void notes() {
    NoteSentence sentence = new NoteSentence(wording);
    List<String> sentences =
        outcome.notes().stream()
            .filter(note -> !(note instanceof Note.SettlesElsewhere))
            .map(sentence::of)
            .distinct()
            .toList();
    if (!sentences.isEmpty()) {
      lines.heading("Doubts and limits");
      sentences.forEach(note -> lines.paragraph("  ", "    ", note));
    }
  }
}
