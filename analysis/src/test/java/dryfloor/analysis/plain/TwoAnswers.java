package dryfloor.analysis.plain;

import dryfloor.analysis.failure.Effect;
import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureCatalogue;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.failure.FailureResolver;
import dryfloor.analysis.outcome.Note;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.model.Installation;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** One installation, its failures answered by the engine and by the plain simulator. */
final class TwoAnswers {

  /** How normal operation is called among the failures. */
  static final String NORMAL = "normal operation";

  /** Water that tees may make or lose, each being balanced by trial: half the film (m³). */
  private static final double MADE = 5e-5;

  /** Normal operation is settled once and is worth waiting for. */
  private static final Patience FOR_NORMAL_OPERATION = Patience.ofSteps(200_000);

  private final String scenario;
  private final Installation drawing;
  private final Patience patience;
  private final EngineAnswers engine;
  private final PlainSimulation normal;

  TwoAnswers(String scenario, Installation drawing, Patience patience) {
    this.scenario = scenario;
    this.drawing = drawing;
    this.patience = patience;
    this.engine = new EngineAnswers(drawing);
    this.normal = PlainSimulation.normal(drawing, FOR_NORMAL_OPERATION);
  }

  Entry normalOperation() {
    return entry(NORMAL, normal, engine.normal());
  }

  /** The failures whose ids are asked for. */
  List<Entry> failures(Predicate<String> asked) {
    return FailureCatalogue.of(drawing).stream()
        .filter(failure -> asked.test(FailureNames.id(failure)))
        .map(this::failure)
        .toList();
  }

  private Entry failure(Failure failure) {
    String id = FailureNames.id(failure);
    if (failure instanceof Failure.SequenceHappens) {
      return new Entry.NotCompared(scenario, id, Entry.Why.PLAIN_KNOWS_NO_SEQUENCE);
    }
    return switch (engine.answer(failure)) {
      case FailureResult.Answered answered -> compared(failure, id, answered.outcome());
      case FailureResult.Unanswered unanswered ->
          new Entry.NotCompared(scenario, id, Entry.Why.ENGINE_HAS_NO_ANSWER);
      case FailureResult.Skipped skipped ->
          throw new AssertionError("skipped, though asked: " + id);
    };
  }

  private Entry compared(Failure failure, String id, Outcome outcome) {
    List<Effect> effects = new ArrayList<>(FailureResolver.resolve(drawing, failure));
    for (Note note : outcome.notes()) {
      if (note instanceof Note.SiphonBreakInDoubt doubt && !doubt.worked()) {
        effects.add(new Effect.SiphonBreakHeldShut(doubt.siphonBreak()));
      }
      if (note instanceof Note.PrimingInDoubt doubt && doubt.filled()) {
        effects.add(new Effect.PrimesEarly(doubt.run()));
      }
    }
    PlainSimulation plain = PlainSimulation.failure(normal, effects, patience);
    return entry(id, plain, outcome);
  }

  private Entry entry(String id, PlainSimulation plain, Outcome outcome) {
    if (Math.abs(plain.imbalance()) > MADE) {
      return new Entry.NotCompared(scenario, id, Entry.Why.PLAIN_DOES_NOT_BALANCE);
    }
    return plain.isOver()
        ? new Entry.Compared(Comparison.of(scenario, id, drawing, plain, outcome))
        : new Entry.NotCompared(scenario, id, Entry.Why.PLAIN_TAKES_TOO_LONG);
  }
}
