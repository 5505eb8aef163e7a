package dryfloor.analysis.together;

import dryfloor.analysis.outcome.Verdict;

/** What is known about two failures at once. */
public sealed interface PairAnswer {

  Pair pair();

  /** One of the two, or each, wets a floor without the other; that is what has to be mended. */
  record WetAlone(Pair pair, boolean first, boolean second) implements PairAnswer {}

  /** One changes nothing that the other does not change too: it is as that one alone. */
  record AsOneAlone(Pair pair, Verdict verdict) implements PairAnswer {}

  /**
   * Neither changes anything that the other depends on, at any time: each does what it does alone.
   */
  record Apart(Pair pair, Verdict verdict) implements PairAnswer {}

  /** Both were simulated together. */
  record Together(Pair pair, KeptOutcome outcome) implements PairAnswer {}

  /** Both take hold of one and the same thing in different ways, so they can't both be. */
  record Excluded(Pair pair) implements PairAnswer {}

  /** No answer, and why; never counted as dry. */
  record Unanswered(Pair pair, String reason) implements PairAnswer {}

  /** Whether a floor gets wet that stays dry after each of the two alone. */
  default boolean isNewlyWet() {
    return switch (this) {
      case Together together -> together.outcome().verdict() == Verdict.WET;
      case WetAlone wet -> false;
      case AsOneAlone same -> false;
      case Apart apart -> false;
      case Excluded excluded -> false;
      case Unanswered unanswered -> false;
    };
  }
}
