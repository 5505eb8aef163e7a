package dryfloor.analysis.together;

import dryfloor.analysis.failure.Effect;
import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureResolver;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.Verdict;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.Inquiry;
import dryfloor.analysis.sweep.SweepResult;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A failure by itself, as far as it matters to failures together.
 *
 * @param effects of the failure
 * @param outcome of the failure; none where it has no answer
 * @param influence what it changes; none where all with it has to be simulated
 */
record Alone(
    Failure failure,
    List<Effect> effects,
    Optional<Outcome> outcome,
    Optional<Influences.Influence> influence) {

  Alone {
    effects = List.copyOf(effects);
  }

  /**
   * Every failure that the drawing does not switch off and that is one failure: sequences are
   * several already, each at its time, and are put together with nothing.
   */
  static List<Alone> of(Inquiry inquiry, SweepResult sweep) {
    return of(inquiry, sweep, Influences.of(inquiry));
  }

  /** The same, where what goes on without a failure is known. */
  static List<Alone> of(Inquiry inquiry, SweepResult sweep, Optional<Influences> influences) {
    return sweep.results().stream()
        .filter(result -> !(result.failure() instanceof Failure.SequenceHappens))
        .flatMap(result -> of(inquiry, result, influences))
        .toList();
  }

  private static Stream<Alone> of(
      Inquiry inquiry, FailureResult result, Optional<Influences> influences) {
    Failure failure = result.failure();
    List<Effect> effects = FailureResolver.resolve(inquiry.installation(), failure);
    return switch (result) {
      case FailureResult.Answered answered ->
          Stream.of(
              new Alone(
                  failure,
                  effects,
                  Optional.of(answered.outcome()),
                  influences.map(all -> all.of(effects, answered.outcome()))));
      case FailureResult.Unanswered unanswered ->
          Stream.of(new Alone(failure, effects, Optional.empty(), Optional.empty()));
      case FailureResult.Skipped skipped -> Stream.empty();
    };
  }

  boolean isWet() {
    return outcome.filter(o -> o.verdict() == Verdict.WET).isPresent();
  }
}
