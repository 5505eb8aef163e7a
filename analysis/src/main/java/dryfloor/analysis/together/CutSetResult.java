package dryfloor.analysis.together;

import dryfloor.analysis.failure.Failure;
import java.util.List;

/**
 * All minimal cut sets of an installation up to three failures, for the top event that a floor gets
 * wet.
 *
 * @param pairs of every two failures, and every failure by itself
 * @param failures how many were put together
 * @param sets the smallest first, within a size worst first
 * @param threes how many sets of three could be minimal, all their pairs being dry
 * @param simulated how many of them had to be simulated
 * @param unanswered sets of three without an answer; never counted as dry
 */
public record CutSetResult(
    PairResult pairs,
    int failures,
    List<CutSet> sets,
    int threes,
    int simulated,
    List<Open> unanswered) {

  public CutSetResult {
    sets = List.copyOf(sets);
    unanswered = List.copyOf(unanswered);
  }

  /** Failures without an answer when all happen, and why. */
  public record Open(List<Failure> failures, String reason) {
    public Open {
      failures = List.copyOf(failures);
    }
  }

  /** The sets of so many failures. */
  public List<CutSet> ofSize(int size) {
    return sets.stream().filter(set -> set.failures().size() == size).toList();
  }
}
