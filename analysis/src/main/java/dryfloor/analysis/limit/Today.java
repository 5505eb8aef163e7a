package dryfloor.analysis.limit;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.Inquiry;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.analysis.together.Untouched;
import dryfloor.model.Installation;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Every failure as drawn, and what none may do. */
final class Today {

  private final SweepResult results;
  private final Bounds bounds;
  private final Set<Failure> wrong;
  private final Set<Failure> right;
  private final Once<Inquiry> settledAgain;
  private final Once<Optional<Untouched>> untouched;
  private final Once<Optional<Outcome>> undisturbed;

  Today(SweepResult results, Bounds bounds) {
    this.results = results;
    this.bounds = bounds;
    this.wrong =
        results.results().stream()
            .filter(result -> isWrong(result, installation()))
            .map(FailureResult::failure)
            .collect(Collectors.toCollection(LinkedHashSet::new));
    this.right =
        results.results().stream()
            .map(FailureResult::failure)
            .filter(failure -> !wrong.contains(failure))
            .collect(Collectors.toSet());
    this.settledAgain = new Once<>(this::settleAgain);
    this.untouched = new Once<>(() -> Untouched.of(settledAgain.get(), results));
    this.undisturbed = new Once<>(() -> settledAgain.get().undisturbed());
  }

  SweepResult results() {
    return results;
  }

  Bounds bounds() {
    return bounds;
  }

  /** Normal operation as drawn. */
  Outcome normal() {
    return results.normal();
  }

  /** What goes on when nothing fails; none where that comes to no answer. */
  Optional<Outcome> undisturbed() {
    return undisturbed.get();
  }

  Installation installation() {
    return results.installation();
  }

  /** The failures that do today what they may not, or of which nobody knows. */
  Stream<Failure> wrong() {
    return wrong.stream();
  }

  /** Whether it is known that this failure does nothing today that it may not. */
  boolean isRight(Failure failure) {
    return right.contains(failure);
  }

  /** When a failure first wets a floor today (s); nothing where it wets none or has no answer. */
  OptionalDouble firstWetFloor(Failure failure) {
    return results.results().stream()
        .filter(result -> result.failure().equals(failure))
        .filter(FailureResult.Answered.class::isInstance)
        .map(result -> ((FailureResult.Answered) result).outcome().firstWetFloor())
        .findFirst()
        .orElse(OptionalDouble.empty());
  }

  /** Those of these failures that are not wrong today already, with those that today has not. */
  List<Failure> notWrong(Collection<Failure> failures) {
    return failures.stream().filter(failure -> !wrong.contains(failure)).toList();
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

  /**
   * What is wrong with a failure that a changed drawing does not list. A run whose lowest point has
   * become a joint comes apart there all the same, under the name of the joint, so nothing is
   * mended; any other failure can't happen any more.
   */
  Optional<Decider> whereNotListed(Failure failure) {
    boolean listedAtAJoint =
        failure instanceof Failure.RunPartsAtLowestPoint
            || failure instanceof Failure.RunDripsAtLowestPoint;
    return results.results().stream()
        .filter(result -> listedAtAJoint && result.failure().equals(failure))
        .flatMap(result -> wrong(result, installation()).stream())
        .findFirst();
  }

  /**
   * Failures that need not be run where one property has another value, because they have nothing
   * to do with it. That is known of floors alone: where more is asked, all are run.
   *
   * @param changed the drawing with that value, settled
   */
  Predicate<Failure> untouched(Inquiry changed, Property property) {
    return bounds.equals(Bounds.DRY_FLOORS)
        ? untouched.get().map(all -> all.in(changed, property.of())).orElse(failure -> false)
        : failure -> false;
  }

  private Inquiry settleAgain() {
    try {
      return Inquiry.of(installation(), () -> false);
    } catch (BaselineProblem problem) {
      throw new IllegalStateException("what settled once must settle again", problem);
    }
  }
}
