package dryfloor.analysis.mark;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.Sweep;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.model.Installation;
import dryfloor.model.element.Vessel;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Finds the marks of every vessel that holds water when all is well. */
public final class Marks {

  /** Less than anybody can mark on a glass (m) is no rise. */
  private static final double RISES = 5e-3;

  /** Nobody marks a glass finer than this (m). */
  private static final double FINENESS = 1e-3;

  /** A drawn level is moved by this much (m) to see whether the settled one follows. */
  private static final double NUDGE = 5e-3;

  private final Installation installation;

  private Marks(Installation installation) {
    this.installation = installation;
  }

  /** The marks, in the order of the drawing; nothing where a power loss has no answer. */
  public static List<VesselMarks> of(SweepResult sweep) {
    Marks marks = new Marks(sweep.installation());
    return powerLoss(sweep).stream()
        .flatMap(outcome -> outcome.vessels().stream())
        .filter(vessel -> marks.holdsWater(vessel.id()))
        .map(marks::of)
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

  private boolean holdsWater(String id) {
    Vessel vessel = vessel(id);
    return !vessel.isBasin() && vessel.level() > vessel.bottom();
  }

  private VesselMarks of(Outcome.VesselOutcome vessel) {
    boolean rises = vessel.highestLevel() > vessel.levelBefore() + RISES;
    return new VesselMarks(
        vessel.id(),
        vessel.bottom(),
        vessel.rim(),
        vessel.levelBefore(),
        vessel.levelAfter(),
        rises ? highestSafe(vessel) : OptionalDouble.empty());
  }

  private OptionalDouble highestSafe(Outcome.VesselOutcome vessel) {
    if (!followsFilling(vessel)) {
      return OptionalDouble.empty();
    }
    double guess = vessel(vessel.id()).level() + vessel.rim() - vessel.highestLevel();
    double safe = vessel.bottom();
    double unsafe = vessel.rim();
    OptionalDouble found = OptionalDouble.empty();
    double next = Math.clamp(guess - 2 * FINENESS, safe, unsafe);
    while (unsafe - safe > FINENESS) {
      OptionalDouble settled = settledIfDry(vessel.id(), next);
      if (settled.isPresent()) {
        found = settled;
        safe = next;
      } else {
        unsafe = next;
      }
      next = between(safe, guess, unsafe);
    }
    return found;
  }

  /**
   * What to try next: just beside the guess as long as one side of it is open, else the middle. In
   * a vessel with upright walls the guess is right, as what comes down is always the same.
   */
  private static double between(double safe, double guess, double unsafe) {
    double above = guess + 2 * FINENESS;
    double below = guess - 2 * FINENESS;
    if (safe < below && below < unsafe) {
      return below;
    }
    return safe < above && above < unsafe && safe >= below ? above : (safe + unsafe) / 2;
  }

  /** Whether a drop less in the drawing is a drop less in operation. */
  private boolean followsFilling(Outcome.VesselOutcome vessel) {
    double drawn = vessel(vessel.id()).level();
    return powerLossAt(vessel.id(), Math.max(vessel.bottom(), drawn - NUDGE)).stream()
        .map(outcome -> levelBefore(outcome, vessel.id()))
        .anyMatch(settled -> settled < vessel.levelBefore() - NUDGE / 2);
  }

  private OptionalDouble settledIfDry(String vessel, double drawn) {
    return powerLossAt(vessel, drawn).stream()
        .filter(
            outcome ->
                switch (outcome.verdict()) {
                  case DRY -> true;
                  case CAUGHT, WET -> false;
                })
        .mapToDouble(outcome -> levelBefore(outcome, vessel))
        .findFirst();
  }

  private Optional<Outcome> powerLossAt(String vessel, double level) {
    try {
      return outcome(
          Sweep.together(withLevel(vessel, level), List.of(new Failure.BuildingLosesPower())));
    } catch (BaselineProblem spillsAlready) {
      return Optional.empty();
    }
  }

  private static double levelBefore(Outcome outcome, String vessel) {
    return outcome.vessels().stream()
        .filter(found -> found.id().equals(vessel))
        .mapToDouble(Outcome.VesselOutcome::levelBefore)
        .findFirst()
        .orElseThrow();
  }

  private static Optional<Outcome> outcome(FailureResult result) {
    return switch (result) {
      case FailureResult.Answered answered -> Optional.of(answered.outcome());
      case FailureResult.Unanswered unanswered -> Optional.empty();
      case FailureResult.Skipped skipped -> Optional.empty();
    };
  }

  private Vessel vessel(String id) {
    return installation.vessels().stream()
        .filter(vessel -> vessel.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private Installation withLevel(String id, double level) {
    return installation.withVessels(
        installation.vessels().stream()
            .map(vessel -> vessel.id().equals(id) ? vessel.withLevel(level) : vessel)
            .toList());
  }
}
