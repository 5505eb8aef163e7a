package dryfloor.analysis.pair;

import dryfloor.analysis.failure.Effect;
import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureResolver;
import dryfloor.analysis.failure.FailureTraits;
import dryfloor.analysis.outcome.Note;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.Verdict;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.Inquiry;
import dryfloor.analysis.sweep.Progress;
import dryfloor.analysis.sweep.Sweep;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.analysis.sweep.Team;
import dryfloor.model.Installation;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Answers two failures at a time. */
public final class Pairs {

  private final Inquiry inquiry;
  private final Idle idle;
  private final Optional<Influences> influences;

  /**
   * A failure by itself, as far as it matters to pairs.
   *
   * @param influence what it changes; none where pairs with it are always simulated
   */
  private record Alone(
      Failure failure,
      FailureResult result,
      List<Effect> effects,
      Optional<Influences.Influence> influence) {}

  private Pairs(Inquiry inquiry) {
    this.inquiry = inquiry;
    this.idle = new Idle(inquiry.installation());
    this.influences =
        inquiry.undisturbed().map(usual -> new Influences(inquiry.installation(), usual));
  }

  /**
   * Answers every pair of a scope, after every failure by itself. Failures that the drawing
   * switches off are in no pair.
   *
   * @param threads to use; the answers do not depend on it
   * @param progress told of failures first, then of the pairs that have to be simulated
   * @throws BaselineProblem if the installation spills or never settles when all is well
   * @throws CancellationException if {@code progress} ended it before normal operation had settled
   */
  public static PairResult of(
      Installation installation, Scope scope, int threads, Progress progress)
      throws BaselineProblem {
    return of(Inquiry.of(installation, progress::cancelled), scope, threads, progress);
  }

  static PairResult of(Inquiry inquiry, Scope scope, int threads, Progress progress) {
    return new Pairs(inquiry).all(scope, threads, progress);
  }

  private PairResult all(Scope scope, int threads, Progress progress) {
    SweepResult alone = Sweep.everyFailure(inquiry, threads, progress);
    List<Alone> failures = alone.results().stream().flatMap(this::alone).toList();
    Set<Failure> hidden = hidden(failures);
    List<PairAnswer> answers = new ArrayList<>();
    List<Integer> open = new ArrayList<>();
    for (Alone first : failures) {
      for (Alone second : failures.subList(failures.indexOf(first) + 1, failures.size())) {
        if (scope.joins(first.failure(), second.failure(), hidden)) {
          Optional<PairAnswer> known = known(first, second);
          if (known.isEmpty()) {
            open.add(answers.size());
          }
          Pair pair = new Pair(first.failure(), second.failure());
          answers.add(known.orElse(new PairAnswer.Unanswered(pair, "it was cancelled")));
        }
      }
    }
    Team.share(open.size(), threads, progress, i -> simulate(open.get(i), answers));
    return new PairResult(scope, alone, answers);
  }

  private Set<Failure> hidden(List<Alone> failures) {
    return failures.stream()
        .map(Alone::failure)
        .filter(failure -> FailureTraits.isHidden(failure, installation()))
        .collect(Collectors.toSet());
  }

  private Installation installation() {
    return inquiry.installation();
  }

  private Stream<Alone> alone(FailureResult result) {
    List<Effect> effects = FailureResolver.resolve(installation(), result.failure());
    return switch (result) {
      case FailureResult.Answered answered ->
          Stream.of(
              new Alone(
                  result.failure(),
                  result,
                  effects,
                  influences.map(all -> all.of(effects, answered.outcome()))));
      case FailureResult.Unanswered unanswered ->
          Stream.of(new Alone(result.failure(), result, effects, Optional.empty()));
      case FailureResult.Skipped skipped -> Stream.empty();
    };
  }

  // What is known before anything is simulated.

  private Optional<PairAnswer> known(Alone first, Alone second) {
    Pair pair = new Pair(first.failure(), second.failure());
    if (isWet(first) || isWet(second)) {
      return Optional.of(new PairAnswer.WetAlone(pair, isWet(first), isWet(second)));
    }
    Optional<Failure> open =
        Stream.of(first, second)
            .filter(alone -> outcome(alone).isEmpty())
            .map(Alone::failure)
            .findFirst();
    if (open.isPresent()) {
      return Optional.of(
          new PairAnswer.Unanswered(pair, "one of the two has no answer even alone"));
    }
    if (Grip.excludes(first.effects(), second.effects())) {
      return Optional.of(new PairAnswer.Excluded(pair));
    }
    return leftOut(pair, first, second);
  }

  private Optional<PairAnswer> leftOut(Pair pair, Alone first, Alone second) {
    Optional<PairAnswer> same = asOneAlone(pair, first, second);
    if (same.isEmpty()) {
      same = asOneAlone(pair, second, first);
    }
    if (same.isPresent()) {
      return same;
    }
    boolean meet =
        first.influence().isEmpty()
            || second.influence().isEmpty()
            || first.influence().get().meets(second.influence().get());
    return meet ? Optional.empty() : Optional.of(new PairAnswer.Apart(pair, worse(first, second)));
  }

  private Optional<PairAnswer> asOneAlone(Pair pair, Alone one, Alone other) {
    return outcome(one)
        .filter(course -> addsNothing(other, one, course))
        .map(course -> new PairAnswer.AsOneAlone(pair, course.verdict()));
  }

  /**
   * Whether all that a failure changes is changed by the other anyway, or idle in its course. Where
   * a siphon break was in doubt only one of two courses is known.
   */
  private boolean addsNothing(Alone failure, Alone other, Outcome course) {
    List<Effect> more =
        failure.effects().stream().filter(effect -> !other.effects().contains(effect)).toList();
    boolean doubt = course.notes().stream().anyMatch(Note.SiphonBreakInDoubt.class::isInstance);
    return more.isEmpty()
        || (!doubt && more.stream().allMatch(effect -> idle.isIdle(effect, course)));
  }

  private static Verdict worse(Alone first, Alone second) {
    return Stream.of(first, second)
        .flatMap(alone -> outcome(alone).stream())
        .map(Outcome::verdict)
        .max(Verdict::compareTo)
        .orElseThrow();
  }

  private static boolean isWet(Alone alone) {
    return outcome(alone).filter(outcome -> outcome.verdict() == Verdict.WET).isPresent();
  }

  private static Optional<Outcome> outcome(Alone alone) {
    return switch (alone.result()) {
      case FailureResult.Answered answered -> Optional.of(answered.outcome());
      case FailureResult.Unanswered unanswered -> Optional.empty();
      case FailureResult.Skipped skipped -> Optional.empty();
    };
  }

  // What has to be simulated.

  private void simulate(int index, List<PairAnswer> answers) {
    Pair pair = answers.get(index).pair();
    PairAnswer answer =
        switch (inquiry.answerOnce(pair.both())) {
          case FailureResult.Answered answered ->
              new PairAnswer.Together(pair, PairOutcome.of(answered.outcome()));
          case FailureResult.Unanswered unanswered ->
              new PairAnswer.Unanswered(pair, unanswered.reason());
          case FailureResult.Skipped skipped -> new PairAnswer.Unanswered(pair, skipped.reason());
        };
    answers.set(index, answer);
  }
}
