package dryfloor.analysis.mark;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.limit.Limits;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.Progress;
import dryfloor.analysis.sweep.SweepResult;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Finds the marks of every vessel that holds water when all is well. */
public final class Marks {

  private Marks() {}

  /**
   * The marks, in the order of the drawing; nothing where a power loss has no answer.
   *
   * @param threads to use; the marks do not depend on it
   */
  public static List<VesselMarks> of(SweepResult sweep, int threads, Progress progress) {
    Optional<Outcome> powerLoss = powerLoss(sweep);
    Map<String, Double> highest =
        powerLoss.isPresent() ? Limits.highestRunningLevels(sweep, threads, progress) : Map.of();
    return powerLoss.stream()
        .flatMap(outcome -> outcome.vessels().stream())
        .filter(vessel -> holdsWater(sweep, vessel.id()))
        .map(
            vessel ->
                marks(
                    vessel,
                    Optional.ofNullable(highest.get(vessel.id())),
                    Overflow.of(sweep.installation(), powerLoss.orElseThrow(), vessel)))
        .toList();
  }

  /**
   * What a power loss in the whole building does, if the drawing has power and there is an answer.
   */
  public static Optional<Outcome> powerLoss(SweepResult sweep) {
    return sweep.results().stream()
        .filter(result -> result.failure() instanceof Failure.BuildingLosesPower)
        .flatMap(result -> outcome(result).stream())
        .findFirst();
  }

  private static boolean holdsWater(SweepResult sweep, String id) {
    return sweep.installation().vessels().stream()
        .filter(vessel -> vessel.id().equals(id))
        .anyMatch(vessel -> !vessel.isBasin() && vessel.level() > vessel.bottom());
  }

  /** No level is safe above one from which a power loss wets a floor. */
  private static VesselMarks marks(
      Outcome.VesselOutcome vessel, Optional<Double> highest, VesselMarks.PowerLoss powerLoss) {
    return new VesselMarks(
        vessel.id(),
        vessel.bottom(),
        vessel.rim(),
        vessel.levelBefore(),
        vessel.levelAfter(),
        highest
            .filter(level -> powerLoss != VesselMarks.PowerLoss.WETS_A_FLOOR)
            .map(OptionalDouble::of)
            .orElseGet(OptionalDouble::empty),
        powerLoss);
  }

  private static Optional<Outcome> outcome(FailureResult result) {
    return switch (result) {
      case FailureResult.Answered answered -> Optional.of(answered.outcome());
      case FailureResult.Unanswered unanswered -> Optional.empty();
      case FailureResult.Skipped skipped -> Optional.empty();
    };
  }
}
