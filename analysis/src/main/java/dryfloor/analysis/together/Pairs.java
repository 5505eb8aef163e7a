package dryfloor.analysis.together;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureTraits;
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
  private final List<Alone> failures;
  private final Idle idle;

  private Pairs(Inquiry inquiry, List<Alone> failures) {
    this.inquiry = inquiry;
    this.failures = failures;
    this.idle = new Idle(inquiry.installation());
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
    SweepResult alone = Sweep.everyFailure(inquiry, threads, progress);
    List<Alone> failures = Alone.of(inquiry, alone);
    Seen nobody = (pair, outcome) -> {};
    return new PairResult(scope, alone, of(inquiry, failures, scope, threads, progress, nobody));
  }

  /** Is shown the whole outcome of each pair that is simulated, by the thread that did so. */
  interface Seen {
    void simulated(Pair pair, Outcome outcome);
  }

  /** The pairs of failures that are known by themselves. */
  static List<PairAnswer> of(
      Inquiry inquiry,
      List<Alone> failures,
      Scope scope,
      int threads,
      Progress progress,
      Seen seen) {
    return new Pairs(inquiry, failures).all(scope, threads, progress, seen);
  }

  private List<PairAnswer> all(Scope scope, int threads, Progress progress, Seen seen) {
    Set<Failure> hidden = hidden();
    List<PairAnswer> answers = new ArrayList<>();
    List<Integer> open = new ArrayList<>();
    for (int i = 0; i < failures.size(); i++) {
      Alone first = failures.get(i);
      for (Alone second : failures.subList(i + 1, failures.size())) {
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
    Team.share(open.size(), threads, progress, i -> simulate(open.get(i), answers, seen));
    return answers;
  }

  private Set<Failure> hidden() {
    return failures.stream()
        .map(Alone::failure)
        .filter(failure -> FailureTraits.isHidden(failure, inquiry.installation()))
        .collect(Collectors.toSet());
  }

  // What is known before anything is simulated.

  private Optional<PairAnswer> known(Alone first, Alone second) {
    Pair pair = new Pair(first.failure(), second.failure());
    if (first.isWet() || second.isWet()) {
      return Optional.of(new PairAnswer.WetAlone(pair, first.isWet(), second.isWet()));
    }
    Optional<Failure> open =
        Stream.of(first, second)
            .filter(alone -> alone.outcome().isEmpty())
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
    return one.outcome()
        .filter(course -> idle.addsNothing(other.effects(), one.effects(), List.of(course)))
        .map(course -> new PairAnswer.AsOneAlone(pair, course.verdict()));
  }

  private static Verdict worse(Alone first, Alone second) {
    return Stream.of(first, second)
        .flatMap(alone -> alone.outcome().stream())
        .map(Outcome::verdict)
        .max(Verdict::compareTo)
        .orElseThrow();
  }

  // What has to be simulated.

  private void simulate(int index, List<PairAnswer> answers, Seen seen) {
    Pair pair = answers.get(index).pair();
    PairAnswer answer =
        switch (inquiry.answerOnce(pair.both())) {
          case FailureResult.Answered answered -> {
            seen.simulated(pair, answered.outcome());
            yield new PairAnswer.Together(pair, KeptOutcome.of(answered.outcome()));
          }
          case FailureResult.Unanswered unanswered ->
              new PairAnswer.Unanswered(pair, unanswered.reason());
          case FailureResult.Skipped skipped -> new PairAnswer.Unanswered(pair, skipped.reason());
        };
    answers.set(index, answer);
  }
}
