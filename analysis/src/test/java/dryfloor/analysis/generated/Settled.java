package dryfloor.analysis.generated;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureCatalogue;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.failure.FailureResolver;
import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.outcome.Ending;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.Trajectory;
import dryfloor.analysis.outcome.Verdict;
import dryfloor.analysis.simulation.Accuracy;
import dryfloor.analysis.simulation.Course;
import dryfloor.analysis.simulation.NoAnswer;
import dryfloor.analysis.simulation.OutcomeBuilder;
import dryfloor.analysis.simulation.Simulation;
import dryfloor.model.Installation;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;

/**
 * An installation in normal operation, in which things can be let happen.
 *
 * @param normal where it settled, or had come to when the time was over
 */
public record Settled(Installation installation, Course normal) {

  /** More steps than this are not waited for where the answer itself is not the question. */
  private static final int PATIENCE = 20_000;

  /** A level that moved no further than this did not move (m). */
  private static final double AT_REST = 1e-5;

  /** Normal operation; none where it takes too long or comes to no answer. */
  public static Optional<Settled> of(Installation installation) {
    try {
      return Optional.of(
          new Settled(
              installation,
              Simulation.ofNormalOperation(
                  FlowNetwork.of(installation, List.of()), Accuracy.USUAL, patience())));
    } catch (NoAnswer noAnswer) {
      return Optional.empty();
    }
  }

  /** Like {@link #of}, and only where nothing spills and it comes to an end. */
  public static Optional<Settled> sound(Building building) {
    return of(building.draw())
        .filter(settled -> settled.outcome().verdict() == Verdict.DRY)
        .filter(settled -> !(settled.normal().ending() instanceof Ending.StillMoving));
  }

  /** Like {@link #sound}, and only where levels come to rest, whatever runs through. */
  public static Optional<Settled> calm(Building building) {
    return sound(building).filter(settled -> isStill(settled.normal()));
  }

  public Outcome outcome() {
    return OutcomeBuilder.of(normal, List.of());
  }

  /** Whether it ended with all levels at rest, whatever runs through. */
  static boolean isStill(Course course) {
    return switch (course.ending()) {
      case Ending.AtRest rest -> true;
      case Ending.Continues on -> standsAtTheEnd(OutcomeBuilder.of(course, List.of()).trajectory());
      case Ending.Repeats repeats -> false;
      case Ending.StillMoving moving -> false;
      case Ending.UpAndDown upAndDown -> false;
    };
  }

  /** Up to when levels were followed (s): less than the unattended time if all came to an end. */
  static double followedFor(Course course) {
    Trajectory levels = OutcomeBuilder.of(course, List.of()).trajectory();
    return levels.time(levels.moments() - 1);
  }

  /** Whether no level changed in the second half of the time that was followed. */
  private static boolean standsAtTheEnd(Trajectory levels) {
    int last = levels.moments() - 1;
    for (int moment = last; moment >= 0; moment--) {
      for (String place : levels.places()) {
        if (Math.abs(levels.level(moment, place) - levels.level(last, place)) > AT_REST) {
          return levels.time(moment) < levels.time(last) / 2;
        }
      }
    }
    return true;
  }

  /**
   * So many failures by lot. The lot of each hangs on its name less the unit's letter, so that it
   * stays the same while a building shrinks.
   */
  public List<Failure> sample(int many, int lot) {
    return FailureCatalogue.of(installation).stream()
        .sorted(Comparator.comparingLong(failure -> drawn(FailureNames.id(failure), lot)))
        .limit(many)
        .toList();
  }

  private static long drawn(String failure, int lot) {
    String anyUnit = failure.replaceAll("\\b[a-d]-", "");
    return new SplittableRandom(31L * lot + anyUnit.hashCode()).nextLong();
  }

  /** After a failure; none where it takes too long or comes to no answer. */
  public Optional<Course> after(Failure failure) {
    return after(failure, Accuracy.USUAL);
  }

  public Optional<Course> after(Failure failure, Accuracy accuracy) {
    FlowNetwork failed =
        FlowNetwork.of(installation, FailureResolver.resolve(installation, failure));
    return after(failed, accuracy);
  }

  public Optional<Course> after(FlowNetwork failed, Accuracy accuracy) {
    try {
      return Optional.of(Simulation.ofFailure(normal, failed, accuracy, patience()));
    } catch (NoAnswer noAnswer) {
      return Optional.empty();
    }
  }

  private static BooleanSupplier patience() {
    int[] steps = new int[1];
    return () -> ++steps[0] > PATIENCE;
  }
}
