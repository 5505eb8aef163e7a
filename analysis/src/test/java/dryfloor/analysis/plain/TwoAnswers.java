package dryfloor.analysis.plain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.analysis.failure.Effect;
import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureCatalogue;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.failure.FailureResolver;
import dryfloor.analysis.installation.Trial;
import dryfloor.analysis.outcome.Note;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.model.Installation;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** One installation, its failures answered by the engine and by the plain simulator. */
final class TwoAnswers {

  private final String scenario;
  private final Installation drawing;
  private final int mostSteps;
  private final PlainSimulation normal;

  TwoAnswers(String scenario, Installation drawing, int mostSteps) {
    this.scenario = scenario;
    this.drawing = drawing;
    this.mostSteps = mostSteps;
    this.normal = PlainSimulation.normal(drawing, mostSteps);
  }

  Comparison normalOperation() {
    return Comparison.of(scenario, "normal operation", drawing, normal, Trial.normal(drawing));
  }

  /** The failures whose ids are asked for. */
  List<Comparison> failures(Predicate<String> asked) {
    return FailureCatalogue.of(drawing).stream()
        .filter(failure -> asked.test(FailureNames.id(failure)))
        .map(this::failure)
        .toList();
  }

  private Comparison failure(Failure failure) {
    Outcome engine = Trial.after(drawing, failure);
    List<Effect> effects = new ArrayList<>(FailureResolver.resolve(drawing, failure));
    for (Note note : engine.notes()) {
      if (note instanceof Note.SiphonBreakInDoubt doubt && !doubt.worked()) {
        effects.add(new Effect.SiphonBreakHeldShut(doubt.siphonBreak()));
      }
    }
    PlainSimulation plain = PlainSimulation.failure(normal, effects, mostSteps);
    assertThat(plain.imbalance()).as("water that plain made").isCloseTo(0, within(1e-6));
    return Comparison.of(scenario, FailureNames.id(failure), drawing, plain, engine);
  }
}
