package dryfloor.analysis.together;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.outcome.Ending;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.Verdict;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.Inquiry;
import java.util.List;
import java.util.Optional;

/** Holds what was known about pairs without simulating them against the simulation of each. */
final class ShortWay {

  /** The promise for final levels (m), twice: both ways may miss the true one by that much. */
  private static final double LEVEL = 2e-4;

  private final Inquiry inquiry;

  ShortWay(Inquiry inquiry) {
    this.inquiry = inquiry;
  }

  /** Simulates every pair that was left out; returns how many there were. */
  int check(PairResult pairs) {
    pairs.of(PairAnswer.AsOneAlone.class).forEach(same -> check(same.pair(), same.verdict()));
    pairs.of(PairAnswer.Apart.class).forEach(apart -> check(apart.pair(), apart.verdict()));
    return pairs.of(PairAnswer.AsOneAlone.class).size() + pairs.of(PairAnswer.Apart.class).size();
  }

  private void check(Pair pair, Verdict told) {
    Optional<Outcome> together = outcome(inquiry.answerOnce(pair.both()));
    if (together.isEmpty()) {
      return;
    }
    assertThat(together.get().verdict()).as(name(pair)).isEqualTo(told);
    Outcome first = outcome(inquiry.answer(List.of(pair.first()))).orElseThrow();
    Outcome second = outcome(inquiry.answer(List.of(pair.second()))).orElseThrow();
    if (List.of(together.get(), first, second).stream().allMatch(ShortWay::stands)) {
      for (Outcome.VesselOutcome vessel : together.get().vessels()) {
        double change = vessel.levelAfter() - vessel.levelBefore();
        assertThat(change)
            .as(vessel.id() + " after " + name(pair))
            .isCloseTo(
                larger(change(first, vessel.id()), change(second, vessel.id())), within(LEVEL));
      }
    }
  }

  /** Each level is moved by one of the two at most. */
  private static double larger(double one, double other) {
    return Math.abs(one) > Math.abs(other) ? one : other;
  }

  private static double change(Outcome outcome, String vessel) {
    return outcome.vessels().stream()
        .filter(v -> v.id().equals(vessel))
        .mapToDouble(v -> v.levelAfter() - v.levelBefore())
        .sum();
  }

  /** Levels that come and go end at another moment of their cycle. */
  private static boolean stands(Outcome outcome) {
    return switch (outcome.ending()) {
      case Ending.AtRest rest -> true;
      case Ending.Continues continues -> false;
      case Ending.Repeats repeats -> false;
      case Ending.StillMoving moving -> false;
      case Ending.UpAndDown swinging -> false;
    };
  }

  private static Optional<Outcome> outcome(FailureResult result) {
    return switch (result) {
      case FailureResult.Answered answered -> Optional.of(answered.outcome());
      case FailureResult.Unanswered unanswered -> Optional.empty();
      case FailureResult.Skipped skipped -> Optional.empty();
    };
  }

  private static String name(Pair pair) {
    Failure first = pair.first();
    return FailureNames.id(first) + " with " + FailureNames.id(pair.second());
  }
}
