package dryfloor.app.report;

import dryfloor.analysis.failure.FailureCatalogue;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.failure.FailureTraits;
import dryfloor.analysis.outcome.Ending;
import dryfloor.analysis.outcome.Note;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.app.report.TextTable.Column;
import dryfloor.model.FailureSettings;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Every failure of one drawing, worst first. */
public final class CheckReport {

  private final Wording wording;
  private final SweepResult sweep;
  private final Lines lines;

  private CheckReport(Wording wording, SweepResult sweep, Ink ink) {
    this.wording = wording;
    this.sweep = sweep;
    this.lines = new Lines(ink);
  }

  /** The whole report but for what everybody must take care of. */
  public static String of(SweepResult sweep, Wording wording, Ink ink) {
    CheckReport report = new CheckReport(wording, sweep, ink);
    report.head();
    report.table();
    report.afloat();
    report.unanswered();
    report.skipped();
    report.unknownSkips();
    report.hidden();
    return report.lines.text();
  }

  private void head() {
    Tally tally = Tally.of(sweep.results());
    lines.add(lines.ink().heading(wording.installation().name()));
    lines.add(
        tally.total() + (tally.total() == 1 ? " failure: " : " failures: ") + tally.words() + ".");
    worst()
        .ifPresent(
            worst ->
                lines.paragraph(
                    "",
                    "Worst: "
                        + FailureNames.name(worst.failure(), wording.installation())
                        + ": "
                        + new VerdictSentence(wording).explanation(worst.outcome())));
    normal();
    AsDrawn.sentence(wording.installation()).ifPresent(text -> lines.paragraph("", text));
    lines.blank();
  }

  private void normal() {
    sweep.normal().vessels().stream()
        .filter(vessel -> vessel.volumeAfter() > 0)
        .min(Comparator.comparingDouble(this::leftWhenAllIsWell))
        .ifPresent(
            vessel ->
                lines.paragraph(
                    "",
                    "When all is well "
                        + wording.names().the(vessel.id())
                        + " comes closest to its rim: "
                        + wording.amounts().level(leftWhenAllIsWell(vessel))
                        + " left."));
    NoteSentence sentences = new NoteSentence(wording);
    sweep.normal().notes().stream()
        .filter(note -> note instanceof Note.IdlePump || note instanceof Note.EmergencyDrainRuns)
        .forEach(idle -> lines.paragraph("", sentences.of(idle)));
    SettledLevels.write(wording, SettledLevels.ofNormal(sweep.normal()), lines);
  }

  /** Up to the rim from where the water settles, which need not be as high as it is drawn (m). */
  private double leftWhenAllIsWell(Outcome.VesselOutcome vessel) {
    double highest =
        switch (sweep.normal().ending()) {
          case Ending.AtRest rest -> vessel.levelAfter();
          case Ending.Continues continues -> vessel.levelAfter();
          case Ending.StillMoving moving -> vessel.highestLevel();
          case Ending.Repeats repeats -> vessel.highestLevel();
          case Ending.UpAndDown swinging -> vessel.highestLevel();
        };
    return vessel.rim() - highest;
  }

  private Optional<FailureResult.Answered> worst() {
    return sweep.results().stream()
        .filter(FailureResult.Answered.class::isInstance)
        .map(FailureResult.Answered.class::cast)
        .filter(answered -> Answer.of(answered) == Answer.WET)
        .max(Comparator.comparingDouble(answered -> answered.outcome().reachedFloors()));
  }

  private void table() {
    TextTable table =
        new TextTable(
            Column.left("answer"),
            Column.broken("failure", 44),
            Column.broken("where the water is", 32),
            Column.broken("margin", 20),
            Column.right("when"));
    for (FailureResult result : sweep.worstFirst()) {
      row(table, result);
    }
    lines.table(table);
    lines.blank();
    lines.paragraph(
        "",
        "Margin: the vessel that comes closest to its rim. When: the first wet floor, else the first"
            + " water to leave its vessel, else the highest level.");
    lines.paragraph(
        "",
        "'dryfloor tell FILE FAILURE' tells one in full; a part of its name is enough. Ids: "
            + "'dryfloor list FILE'.");
  }

  private void row(TextTable table, FailureResult result) {
    String answer = lines.ink().answer(Answer.of(result));
    String name = FailureNames.name(result.failure(), wording.installation());
    switch (result) {
      case FailureResult.Answered answered -> {
        Outcome outcome = answered.outcome();
        table.row(
            answer,
            name,
            Whereabouts.of(wording, outcome),
            Whereabouts.margin(wording, outcome, sweep.normal()),
            Whereabouts.when(wording, outcome, sweep.normal()));
      }
      case FailureResult.Unanswered unanswered -> table.row(answer, name, "", "", "");
      case FailureResult.Skipped skipped -> {}
    }
  }

  private void unanswered() {
    List<FailureResult.Unanswered> open = of(FailureResult.Unanswered.class);
    if (!open.isEmpty()) {
      lines.heading("No answer, which never counts as dry");
      NoAnswerWords words = new NoAnswerWords(wording);
      open.forEach(result -> reason(result, words.reason(result.reason())));
      lines.paragraph("  ", NoAnswerWords.FOR_ALL);
    }
  }

  private void skipped() {
    List<FailureResult.Skipped> skipped = of(FailureResult.Skipped.class);
    if (!skipped.isEmpty()) {
      lines.heading("Switched off in the drawing");
      skipped.forEach(result -> reason(result, result.reason()));
    }
  }

  /** Vessels that would be lifted, which no level in the table shows. */
  private void afloat() {
    Map<String, Integer> failures = new TreeMap<>();
    for (FailureResult.Answered answered : of(FailureResult.Answered.class)) {
      answered.outcome().notes().stream()
          .filter(Note.MayFloat.class::isInstance)
          .map(Note.MayFloat.class::cast)
          .forEach(note -> failures.merge(note.vessel(), 1, Integer::sum));
    }
    if (!failures.isEmpty()) {
      lines.heading("Could float up in the water around it, tear its pipes and spill");
      failures.forEach(
          (vessel, count) ->
              lines.paragraph(
                  "  ",
                  "    ",
                  wording.names().theAtStart(vessel)
                      + ", in "
                      + count
                      + (count == 1 ? " failure" : " failures")
                      + ". That is not part of the answer."));
    }
  }

  private void unknownSkips() {
    List<FailureSettings.Skipped> unknown = FailureCatalogue.unknownSkips(wording.installation());
    if (!unknown.isEmpty()) {
      lines.heading("Switched off in the drawing, which has no such failure");
      unknown.forEach(skip -> lines.paragraph("  ", "    ", skip.failure() + ": " + skip.reason()));
    }
  }

  private <R extends FailureResult> List<R> of(Class<R> kind) {
    return sweep.worstFirst().stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  private void reason(FailureResult result, String reason) {
    lines.paragraph(
        "  ", "    ", FailureNames.name(result.failure(), wording.installation()) + ": " + reason);
  }

  private void hidden() {
    List<FailureResult> hidden =
        sweep.worstFirst().stream()
            .filter(result -> FailureTraits.isHidden(result.failure(), wording.installation()))
            .toList();
    if (!hidden.isEmpty()) {
      lines.heading("Hidden: these show nothing until something else fails, so test them");
      hidden.forEach(
          result -> lines.add("  " + FailureNames.name(result.failure(), wording.installation())));
    }
  }
}
