package dryfloor.analysis.limit;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.SweepResult;
import java.util.Comparator;
import java.util.List;

/**
 * The limits of one installation.
 *
 * @param today every failure as drawn
 * @param bounds what no failure may do
 * @param answers one for each property that was asked about, in the order of the drawing
 * @param remedies what mends the failures that do today what none may or have no answer, worst
 *     failure first, and for each the least change first
 */
public record LimitResult(
    SweepResult today, Bounds bounds, List<LimitAnswer> answers, List<Remedy> remedies) {

  public LimitResult {
    answers = List.copyOf(answers);
    remedies = List.copyOf(remedies);
  }

  /**
   * The single changes that mend this failure without harm elsewhere, the smallest first, measured
   * by the values that were looked at.
   */
  List<SingleChange.Moved> mends(Failure failure) {
    return answers.stream()
        .filter(LimitAnswer.Found.class::isInstance)
        .map(LimitAnswer.Found.class::cast)
        .flatMap(
            found ->
                found.mends().stream()
                    .filter(mend -> mend.failure().equals(failure))
                    .map(mend -> nearest(found.property(), found.scale(), mend)))
        .sorted(Comparator.comparingDouble(SingleChange.Moved::share))
        .toList();
  }

  private static SingleChange.Moved nearest(Property property, Scale scale, Mend mend) {
    double nearest = mend.ranges().getFirst().from();
    for (SafeRange range : mend.ranges()) {
      double value = Math.clamp(scale.today(), range.from(), range.to());
      if (Math.abs(value - scale.today()) < Math.abs(nearest - scale.today())) {
        nearest = value;
      }
    }
    return SingleChange.Moved.of(property, scale, nearest);
  }

  /** What mends this failure, the least change first. */
  public List<Remedy> remedies(Failure failure) {
    return remedies.stream().filter(remedy -> remedy.failure().equals(failure)).toList();
  }

  /** The failures that do today what none may or have no answer, worst first. */
  public List<Failure> wrongToday() {
    Today both = new Today(today, bounds);
    return today.worstFirst().stream()
        .filter(result -> both.isWrong(result, today.installation()))
        .map(FailureResult::failure)
        .toList();
  }
}
