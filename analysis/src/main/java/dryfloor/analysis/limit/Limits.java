package dryfloor.analysis.limit;

import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.Inquiry;
import dryfloor.analysis.sweep.Progress;
import dryfloor.analysis.sweep.Sweep;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.analysis.sweep.Team;
import dryfloor.model.Installation;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.stream.IntStream;

/** Finds how far what a user may choose can be changed before a floor gets wet. */
public final class Limits {

  /** A level that follows less than this share of a change is set by something else. */
  private static final double FOLLOWS = 0.5;

  /** By so many steps a level is filled higher to see whether it stays (mm). */
  private static final int FILLED = 5;

  private final Choices choices;
  private final SweepResult today;
  private final Progress progress;

  private Limits(Installation installation, SweepResult today, Progress progress) {
    this.choices = new Choices(installation);
    this.today = today;
    this.progress = progress;
  }

  /** Everything that may be chosen in a drawing, in its order. */
  public static List<Property> properties(Installation installation) {
    return new Choices(installation).all();
  }

  /**
   * Finds the limits of these properties.
   *
   * @param threads to use; the answers do not depend on it
   * @param progress told of failures first, then of properties
   * @throws BaselineProblem if the installation spills or never settles when all is well
   * @throws CancellationException if {@code progress} ended it before normal operation had settled
   */
  public static LimitResult of(
      Installation installation, List<Property> properties, int threads, Progress progress)
      throws BaselineProblem {
    Inquiry inquiry = Inquiry.of(installation, progress::cancelled);
    SweepResult today = Sweep.everyFailure(inquiry, threads, progress);
    Limits limits = new Limits(installation, today, progress);
    LimitAnswer[] answers = new LimitAnswer[properties.size()];
    Team.share(
        answers.length, threads, progress, i -> answers[i] = limits.answer(properties.get(i)));
    return new LimitResult(
        today,
        IntStream.range(0, answers.length)
            .mapToObj(
                i ->
                    Optional.ofNullable(answers[i])
                        .orElseGet(() -> limits.cancelled(properties.get(i))))
            .toList());
  }

  private LimitAnswer answer(Property property) {
    try {
      LimitAnswer answer =
          held(property)
              .orElseGet(
                  () -> new LimitSearch(choices, property, today, progress::cancelled).search());
      return progress.cancelled() ? cancelled(property) : answer;
    } catch (CancellationException whileSettling) {
      return cancelled(property);
    }
  }

  private LimitAnswer cancelled(Property property) {
    return new LimitAnswer.Cancelled(property, choices.scale(property));
  }

  /** Whether a level goes back to where it settles today when it is filled a little more. */
  private Optional<LimitAnswer> held(Property property) {
    if (!(property instanceof Property.RunningLevel level)) {
      return Optional.empty();
    }
    Scale scale = choices.scale(property);
    double more = FILLED * scale.step();
    Trial filled =
        Trial.of(choices, property, scale.today() + more, today.normal(), progress::cancelled);
    double settled = Trial.settled(level, today.normal());
    return filled
        .inquiry()
        .map(inquiry -> Trial.settled(level, inquiry.normal()))
        .filter(higher -> higher - settled < FOLLOWS * more)
        .map(higher -> new LimitAnswer.HeldByOthers(property, scale, settled));
  }
}
