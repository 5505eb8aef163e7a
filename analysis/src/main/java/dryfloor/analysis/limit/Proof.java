package dryfloor.analysis.limit;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureCatalogue;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.failure.FailureTraits;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.Inquiry;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.model.Installation;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;

/**
 * Tries whether a change mends a failure and breaks nothing: the drawing can be drawn, runs as it
 * did, the failure does nothing that none may do, and no other does that does not today. What is
 * likely to be wrong is run first, and nothing more after the first that is.
 */
final class Proof {

  private final Today today;
  private final Failure failure;
  private final Choices choices;
  private final BooleanSupplier cancelled;
  private final Set<String> wrong;

  Proof(Today today, Failure failure, Choices choices, BooleanSupplier cancelled) {
    this.today = today;
    this.failure = failure;
    this.choices = choices;
    this.cancelled = cancelled;
    this.wrong = today.wrong().map(FailureNames::id).collect(Collectors.toSet());
  }

  /** The change with all answers, if it is one that mends and breaks nothing. */
  Optional<Proven> of(SingleChange change) {
    Installation changed = change.in(today.installation());
    if (choices.faultOf(changed).isPresent()) {
      return Optional.empty();
    }
    try {
      Inquiry inquiry = Inquiry.of(changed, cancelled);
      Outcome normal = inquiry.normal();
      return runsAsBefore(change, normal)
          ? run(inquiry, normal).map(with -> new Proven(change, with, inquiry.undisturbed()))
          : Optional.empty();
    } catch (BaselineProblem spillsWhenAllIsWell) {
      return Optional.empty();
    }
  }

  /** A pump that moves nothing any more, or a level that does not stay, is no way to run. */
  private boolean runsAsBefore(SingleChange change, Outcome normal) {
    boolean stays =
        !(change instanceof SingleChange.Moved moved)
            || Trial.filledUpAgain(choices, moved.property(), moved.value(), today.normal(), normal)
                .isEmpty();
    return stays && Trial.offDuty(today.normal(), normal).isEmpty();
  }

  private Optional<SweepResult> run(Inquiry inquiry, Outcome normal) {
    List<Failure> catalogue = FailureCatalogue.of(inquiry.installation());
    if (!catalogue.contains(failure) && today.whereNotListed(failure).isPresent()) {
      return Optional.empty();
    }
    Map<Failure, FailureResult> results = new HashMap<>();
    for (Failure next : likelyFirst(catalogue)) {
      FailureResult result = inquiry.answerUnlessSkipped(next);
      if (today.isWrong(result, inquiry.installation())
          && (next.equals(failure) || isRightToday(next))) {
        return Optional.empty();
      }
      results.put(next, result);
    }
    return Optional.of(
        new SweepResult(
            inquiry.installation(), normal, catalogue.stream().map(results::get).toList()));
  }

  private boolean isRightToday(Failure other) {
    return !wrong.contains(FailureNames.id(other));
  }

  /** The failure itself, then what comes with the change, then all about power. */
  private List<Failure> likelyFirst(List<Failure> catalogue) {
    Set<Failure> known = new HashSet<>();
    today.results().results().forEach(result -> known.add(result.failure()));
    List<Failure> order = new ArrayList<>();
    catalogue.stream().filter(failure::equals).forEach(order::add);
    catalogue.stream().filter(next -> !known.contains(next)).forEach(order::add);
    catalogue.stream().filter(FailureTraits::isOrdinaryEvent).forEach(order::add);
    order.addAll(catalogue);
    return order.stream().distinct().toList();
  }
}
