package dryfloor.analysis.limit;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureCatalogue;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.Inquiry;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.model.Installation;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Limits the long way: one value after another, every failure run at each of them. */
final class EveryValue {

  private final Choices choices;
  private final Today today;
  private final Set<String> wrongToday = new HashSet<>();

  EveryValue(SweepResult results) {
    this.choices = new Choices(results.installation());
    this.today = new Today(results, Bounds.DRY_FLOORS);
    today.wrong().map(FailureNames::id).forEach(wrongToday::add);
  }

  /** Where the water settles at the last value upwards before something is wrong. */
  Optional<Double> highest(Property.RunningLevel level) throws BaselineProblem {
    Scale scale = choices.scale(level);
    Optional<Double> settled = Optional.empty();
    for (int step = scale.above(); step <= scale.most(); step++) {
      Trial trial = Trial.of(choices, level, scale.value(step), today, () -> false);
      if (trial.unsound().isPresent() || isWrong(trial.inquiry().orElseThrow())) {
        return settled;
      }
      settled = Optional.of(Trial.settled(level, trial.inquiry().orElseThrow().normal()));
    }
    return Optional.empty();
  }

  private boolean isWrong(Inquiry changed) {
    Installation drawing = changed.installation();
    return FailureCatalogue.of(drawing).stream()
        .filter(failure -> !wrongToday.contains(FailureNames.id(failure)))
        .anyMatch(failure -> isWrong(changed.answerUnlessSkipped(failure), drawing));
  }

  private boolean isWrong(FailureResult result, Installation drawing) {
    return today.isWrong(result, drawing);
  }

  /** Runs every failure that is said to have nothing to do with a value; so many there were. */
  int checkUntouched(Property property, double value) throws BaselineProblem {
    if (choices.fault(property, value).isPresent()) {
      return 0;
    }
    Inquiry changed;
    try {
      changed = Inquiry.of(choices.with(property, value), () -> false);
    } catch (BaselineProblem spillsWhenAllIsWell) {
      return 0;
    }
    var untouched = today.untouched(changed, property);
    List<Failure> claimed =
        today.results().results().stream()
            .map(FailureResult::failure)
            .filter(failure -> today.isRight(failure) && untouched.test(failure))
            .toList();
    for (Failure failure : claimed) {
      if (isWrong(changed.answerUnlessSkipped(failure), changed.installation())) {
        throw new AssertionError(
            FailureNames.id(failure) + " wets a floor with " + property + " at " + value);
      }
    }
    return claimed.size();
  }
}
