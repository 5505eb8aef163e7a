package dryfloor.analysis.sweep;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.outcome.Outcome;

/** What is known about one failure: an answer, or why there is none. */
public sealed interface FailureResult {

  Failure failure();

  /** The water came to an end that was found. */
  record Answered(Failure failure, Outcome outcome) implements FailureResult {}

  /** No answer, and why; never counted as dry. */
  record Unanswered(Failure failure, String reason) implements FailureResult {}

  /** Switched off by the user, and why. */
  record Skipped(Failure failure, String reason) implements FailureResult {}
}
