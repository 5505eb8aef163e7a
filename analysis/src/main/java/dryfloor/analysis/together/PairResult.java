package dryfloor.analysis.together;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureTraits;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.SweepResult;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * All pairs of one installation.
 *
 * @param scope which failures were put together
 * @param alone every failure by itself
 * @param answers one for each pair, in the order of the list of failures
 */
public record PairResult(Scope scope, SweepResult alone, List<PairAnswer> answers) {

  private static final Comparator<PairAnswer.Together> WORST_FIRST =
      Comparator.comparingDouble((PairAnswer.Together t) -> -t.outcome().reachedFloors())
          .thenComparingDouble(t -> t.outcome().firstWetFloor().orElse(Double.MAX_VALUE));

  public PairResult {
    answers = List.copyOf(answers);
  }

  /** The pairs that wet a floor though neither failure does so alone, worst first. */
  public List<PairAnswer.Together> newlyWet() {
    return of(PairAnswer.Together.class).stream()
        .filter(PairAnswer::isNewlyWet)
        .sorted(WORST_FIRST)
        .toList();
  }

  /** The answers of one kind, in the order of the list of failures. */
  public <A extends PairAnswer> List<A> of(Class<A> kind) {
    return answers.stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  /** Each hidden failure that decides whether some event wets a floor, most events first. */
  public List<Protection> protections() {
    List<PairAnswer.Together> wet = newlyWet();
    return failures().stream()
        .filter(failure -> FailureTraits.isHidden(failure, alone.installation()))
        .map(
            failure ->
                new Protection(
                    failure,
                    wet.stream().filter(pair -> isEventFor(failure, pair.pair())).toList()))
        .filter(protection -> !protection.events().isEmpty())
        .sorted(Comparator.comparingInt(protection -> -protection.events().size()))
        .toList();
  }

  private boolean isEventFor(Failure hidden, Pair pair) {
    return pair.has(hidden)
        && !FailureTraits.isHidden(pair.otherThan(hidden), alone.installation());
  }

  /** The failures that were put together with others, in the order of the list. */
  public List<Failure> failures() {
    Set<Failure> paired =
        answers.stream()
            .flatMap(answer -> answer.pair().both().stream())
            .collect(Collectors.toSet());
    return alone.results().stream().map(FailureResult::failure).filter(paired::contains).toList();
  }

  /** All pairs in rows and columns. */
  public PairMatrix matrix() {
    return PairMatrix.of(this);
  }
}
