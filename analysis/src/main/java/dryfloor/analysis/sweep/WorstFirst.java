package dryfloor.analysis.sweep;

import dryfloor.analysis.outcome.Outcome;
import java.util.Comparator;

/** Which of two results is worse. Equal ones keep the order of the list. */
final class WorstFirst {

  static final Comparator<FailureResult> ORDER = Comparator.comparing(HowBad::of);

  /**
   * Which of two courses of one failure is worse. They begin with the same levels, so the least
   * freeboard of all is often that of a vessel in which nothing happens; what counts is how near to
   * their rims those come that gain water, and last how much they gain. What nobody could tell
   * apart does not decide, so this compares two and sorts no more.
   */
  static final Comparator<FailureResult> COURSES =
      Comparator.comparingInt((FailureResult result) -> HowBad.of(result).group())
          .thenComparing((one, other) -> moreWater(one, other, Outcome::reachedFloors))
          .thenComparingDouble(result -> -HowBad.of(result).rate())
          .thenComparing((one, other) -> moreWater(one, other, WorstFirst::spilled))
          .thenComparing(WorstFirst::lessFreeboard)
          .thenComparingDouble(result -> -number(result, WorstFirst::gained));

  /** A level that rises no more than this has stayed where it was (m). */
  private static final double ROSE = 1e-4;

  /** Water less than this (m³), or than a thousandth of it, nobody would tell apart: 0.1 L. */
  private static final double SAME_WATER = 1e-4;

  /** Levels closer than this (m) nobody would tell apart. */
  private static final double SAME_LEVEL = 5e-4;

  private WorstFirst() {}

  /** Whether two courses come to what nobody could tell apart. */
  static boolean isSame(FailureResult one, FailureResult other) {
    return HowBad.of(one).group() == HowBad.of(other).group()
        && isSameWater(number(one, Outcome::reachedFloors), number(other, Outcome::reachedFloors))
        && isSameWater(number(one, WorstFirst::spilled), number(other, WorstFirst::spilled))
        && isClose(
            number(one, WorstFirst::freeboardWhereItRose),
            number(other, WorstFirst::freeboardWhereItRose));
  }

  /** More water first, unless nobody could tell. */
  private static int moreWater(FailureResult one, FailureResult other, OutcomeNumber water) {
    double first = number(one, water);
    double second = number(other, water);
    return isSameWater(first, second) ? 0 : Double.compare(second, first);
  }

  private static int lessFreeboard(FailureResult one, FailureResult other) {
    double first = number(one, WorstFirst::freeboardWhereItRose);
    double second = number(other, WorstFirst::freeboardWhereItRose);
    return isClose(first, second) ? 0 : Double.compare(first, second);
  }

  private static boolean isSameWater(double one, double other) {
    return Math.abs(one - other) <= Math.max(SAME_WATER, 1e-3 * Math.max(one, other));
  }

  /** Where nothing rose there is no freeboard to tell: infinity is close to itself. */
  private static boolean isClose(double one, double other) {
    return Double.compare(one, other) == 0 || Math.abs(one - other) <= SAME_LEVEL;
  }

  private static double number(FailureResult result, OutcomeNumber number) {
    return switch (result) {
      case FailureResult.Answered answered -> number.of(answered.outcome());
      case FailureResult.Unanswered unanswered -> 0;
      case FailureResult.Skipped skipped -> 0;
    };
  }

  /** Water that left vessels for where it should not be (m³). */
  private static double spilled(Outcome outcome) {
    return outcome.vessels().stream().mapToDouble(Outcome.VesselOutcome::spilled).sum();
  }

  /** Least freeboard of the vessels that gained water, even if only for a while (m). */
  private static double freeboardWhereItRose(Outcome outcome) {
    return outcome.vessels().stream()
        .filter(vessel -> vessel.highestLevel() > vessel.levelBefore() + ROSE)
        .mapToDouble(vessel -> vessel.rim() - vessel.highestLevel())
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** Water that vessels gained, all together (m³). */
  private static double gained(Outcome outcome) {
    return outcome.vessels().stream()
        .mapToDouble(vessel -> Math.max(vessel.volumeAfter() - vessel.volumeBefore(), 0))
        .sum();
  }

  /** A number of an outcome. */
  private interface OutcomeNumber {
    double of(Outcome outcome);
  }
}
