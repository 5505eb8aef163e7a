package dryfloor.app.report;

import dryfloor.analysis.absence.AbsenceResult;
import dryfloor.analysis.band.BandResult;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.failure.FailureTraits;
import dryfloor.analysis.limit.LimitResult;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.practice.Warning;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.together.CutSetResult;
import dryfloor.analysis.together.PairResult;
import dryfloor.model.file.Problem;
import dryfloor.model.file.UncertainValue;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** An answer for other programs, in the format that the package description lays down. */
public final class JsonAnswer {

  private static final int FORMAT = 1;
  private final ObjectNode root = JsonText.root();
  private final ArrayNode drawings;

  /**
   * An answer to this command.
   *
   * @param kind "check", "tell", "pairs", "limits", "away", "bands" or "warnings"
   */
  public JsonAnswer(String kind) {
    root.put("dryfloorAnswer", FORMAT);
    root.put("kind", kind);
    root.put("statement", Cautions.STATEMENT);
    drawings = root.putArray("drawings");
  }

  /** A file that could not be answered. */
  public void rejected(Path file, List<Problem> problems) {
    ArrayNode list = drawings.addObject().put("file", file.toString()).putArray("problems");
    for (Problem problem : problems) {
      list.addObject()
          .put("line", problem.line())
          .put("column", problem.column())
          .put("path", problem.path())
          .put("message", problem.message())
          .put("remedy", problem.remedy());
    }
  }

  /** A file whose drawing may be sound, and why there is no answer for it. */
  public void unanswered(Path file, String reason) {
    drawings.addObject().put("file", file.toString()).put("noAnswer", reason);
  }

  /** The answers for a file. */
  public void answered(
      Path file, Wording wording, Optional<Outcome> normal, List<FailureResult> results) {
    ObjectNode drawing = begun(file, wording);
    normal.ifPresent(outcome -> new JsonOutcome(wording, drawing.putObject("normal")).put(outcome));
    if (!wording.installation().tolerances().isEmpty()) {
      drawing.put("tolerancesLeftOut", wording.installation().tolerances().size());
    }
    Tally tally = Tally.of(results);
    drawing
        .putObject("totals")
        .put("wet", tally.of(Answer.WET))
        .put("caught", tally.of(Answer.CAUGHT))
        .put("dry", tally.of(Answer.DRY))
        .put("noAnswer", tally.of(Answer.NO_ANSWER))
        .put("skipped", tally.of(Answer.SKIPPED));
    ArrayNode failures = drawing.putArray("failures");
    results.forEach(result -> put(failures.addObject(), result, wording));
    cautions(drawing.putArray("cautions"), wording);
  }

  /** The pairs of failures of a file. */
  public void paired(Path file, Wording wording, PairResult pairs) {
    ObjectNode drawing = begun(file, wording);
    new JsonPairs(wording, drawing).put(pairs);
    cautions(drawing.putArray("cautions"), wording);
  }

  /** The smallest sets of failures of a file. */
  public void cutSets(Path file, Wording wording, CutSetResult sets) {
    ObjectNode drawing = begun(file, wording);
    new JsonCutSets(wording, drawing).put(sets);
    cautions(drawing.putArray("cautions"), wording);
  }

  /** The limits of a file. */
  public void limited(Path file, Wording wording, LimitResult limits) {
    ObjectNode drawing = begun(file, wording);
    new JsonLimits(wording, drawing).put(limits);
    cautions(drawing.putArray("cautions"), wording);
  }

  /** What becomes of the drawing of a file while nobody is there. */
  public void leftAlone(Path file, Wording wording, AbsenceResult absences) {
    ObjectNode drawing = begun(file, wording);
    new JsonAway(wording, drawing).put(absences);
    cautions(drawing.putArray("cautions"), wording);
  }

  /** How bad and how good it can be where not everything in a file is known exactly. */
  public void bands(Path file, Wording wording, List<UncertainValue> values, BandResult bands) {
    ObjectNode drawing = begun(file, wording);
    new JsonBands(wording, values, drawing).put(bands);
    cautions(drawing.putArray("cautions"), wording);
  }

  /** What rules have against the drawing of a file. */
  public void warned(Path file, Wording wording, List<Warning> warnings) {
    ObjectNode drawing = begun(file, wording);
    ArrayNode list = drawing.putArray("warnings");
    WarningSentence sentence = new WarningSentence(wording);
    for (Warning warning : warnings) {
      list.addObject()
          .put("rule", warning.rule().name())
          .put("text", sentence.of(warning))
          .put("source", warning.rule().source());
    }
    cautions(drawing.putArray("cautions"), wording);
  }

  private ObjectNode begun(Path file, Wording wording) {
    return drawings
        .addObject()
        .put("file", file.toString())
        .put("installation", wording.installation().name())
        .put("away_s", wording.installation().conditions().away());
  }

  /** The text, ending in a line break. */
  public String text() {
    return JsonText.of(root);
  }

  private static void put(ObjectNode node, FailureResult result, Wording wording) {
    node.put("id", FailureNames.id(result.failure()));
    node.put("name", FailureNames.name(result.failure(), wording.installation()));
    node.put("answer", Answer.of(result).name());
    node.put("hidden", FailureTraits.isHidden(result.failure(), wording.installation()));
    switch (result) {
      case FailureResult.Answered answered -> {
        node.put("sentence", new VerdictSentence(wording).of(answered.outcome()));
        new JsonOutcome(wording, node.putObject("outcome")).put(answered.outcome());
      }
      case FailureResult.Unanswered unanswered -> node.put("reason", unanswered.reason());
      case FailureResult.Skipped skipped -> node.put("reason", skipped.reason());
    }
  }

  private static void cautions(ArrayNode list, Wording wording) {
    for (Caution caution : new Cautions(wording).all()) {
      list.addObject()
          .put("topic", caution.topic())
          .put("text", caution.text())
          .put("source", caution.source());
    }
  }
}
