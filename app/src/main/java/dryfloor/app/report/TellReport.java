package dryfloor.app.report;

import dryfloor.analysis.outcome.Outcome;
import dryfloor.app.report.TextTable.Column;

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
    CareSection.write(wording, report.lines);
    return report.lines.text();
  }

  /** The report where there is no outcome, and why. */
  public static String withoutAnswer(String title, Answer answer, String reason, Ink ink) {
    Lines lines = new Lines(ink);
    lines.add(ink.heading(title));
    lines.add(ink.answer(answer));
    lines.paragraph("", Sentences.capital(reason));
    return lines.text();
  }

  private void head(String title) {
    lines.add(lines.ink().heading(wording.installation().name() + " – " + title));
    lines.add(lines.ink().answer(Answer.of(outcome)));
    lines.paragraph("", new VerdictSentence(wording).of(outcome));
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
    table.row("the end", EndingPhrase.of(wording, outcome.ending()));
    outcome
        .dryPumps()
        .forEach(
            dry ->
                table.row(
                    wording.names().small(dry.pump()) + " runs dry", amounts.time(dry.time())));
    lines.table(table);
  }

  private void notes() {
    if (!outcome.notes().isEmpty()) {
      lines.heading("Doubts and limits");
      NoteSentence sentence = new NoteSentence(wording);
      outcome.notes().forEach(note -> lines.paragraph("  ", "    ", sentence.of(note)));
    }
  }
}
