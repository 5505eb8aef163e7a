package dryfloor.analysis.limit;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.model.Installation;
import java.util.Optional;
import java.util.stream.Stream;

/** Every failure as drawn, and what none may do. */
record Today(SweepResult results, Bounds bounds) {

  /** Normal operation as drawn. */
  Outcome normal() {
    return results.normal();
  }

  Installation installation() {
    return results.installation();
  }

  /** The failures that do today what they may not, or of which nobody knows. */
  Stream<Failure> wrong() {
    return results.results().stream()
        .filter(result -> isWrong(result, installation()))
        .map(FailureResult::failure);
  }

  boolean isWrong(FailureResult result, Installation drawing) {
    return wrong(result, drawing).isPresent();
  }

  /** What is wrong with an answer about this drawing or another. */
  Optional<Decider> wrong(FailureResult result, Installation drawing) {
    return switch (result) {
      case FailureResult.Answered answered ->
          bounds.brokenBy(answered.failure(), answered.outcome(), drawing);
      case FailureResult.Unanswered unanswered ->
          Optional.of(new Decider.NoAnswer(unanswered.failure(), unanswered.reason()));
      case FailureResult.Skipped skipped -> Optional.empty();
    };
  }
}
