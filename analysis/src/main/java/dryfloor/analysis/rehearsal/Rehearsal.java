package dryfloor.analysis.rehearsal;

import dryfloor.analysis.outcome.Ending;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.Verdict;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.SweepResult;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/** The failures of an installation that can safely be rehearsed, in a safe order. */
public final class Rehearsal {

  /** How far a level on site may be from the drawing (m). Common practice. */
  public static final double TOLERANCE = 5e-3;

  /** A rehearsal is broken off when a level is this far above what is expected (m). */
  private static final double TOO_HIGH = 2 * TOLERANCE;

  /**
   * What must be left between the mark at which it is broken off and a rim (m). Common practice.
   */
  private static final double RESERVE = 0.01;

  /** Nobody waits longer than this for levels to rest (s). */
  private static final double LONGEST_WAIT = 2 * 3600;

  /** Levels are read no sooner than this (s). */
  private static final double SHORTEST_WAIT = 120;

  /** Less water than this (m) is a dry vessel. */
  static final double DRY = 1e-3;

  private Rehearsal() {}

  /**
   * What can be rehearsed: what a person can bring about and undo, moves a level further than the
   * tolerance, keeps all water in its vessels with room to spare, and comes to rest soon. What
   * stops least comes first: one pump, one circuit, the whole building, and only then power that
   * comes back; among equals the one that leaves most room.
   */
  public static List<RehearsalStep> of(SweepResult sweep) {
    return sweep.results().stream()
        .filter(FailureResult.Answered.class::isInstance)
        .map(FailureResult.Answered.class::cast)
        .filter(answered -> SafeMeans.of(answered.failure()).isPresent())
        .filter(answered -> answered.outcome().verdict() == Verdict.DRY)
        .filter(answered -> shows(answered.outcome()))
        .filter(answered -> roomWhereItRose(answered.outcome()) > TOO_HIGH + RESERVE)
        .filter(answered -> waiting(answered.outcome()).isPresent())
        .sorted(
            Comparator.comparing((FailureResult.Answered answered) -> Extent.of(answered.failure()))
                .thenComparingDouble(answered -> -roomWhereItRose(answered.outcome())))
        .map(Rehearsal::step)
        .toList();
  }

  private static RehearsalStep step(FailureResult.Answered answered) {
    Outcome outcome = answered.outcome();
    return new RehearsalStep(
        answered,
        SafeMeans.of(answered.failure()).orElseThrow(),
        waiting(outcome).orElseThrow(),
        outcome.vessels().stream().map(Rehearsal::expected).toList());
  }

  private static RehearsalStep.ExpectedLevel expected(Outcome.VesselOutcome vessel) {
    return new RehearsalStep.ExpectedLevel(
        vessel.id(),
        vessel.bottom(),
        vessel.rim(),
        vessel.levelBefore(),
        vessel.levelAfter(),
        Math.min(vessel.rim(), vessel.highestLevel() + TOO_HIGH));
  }

  /** Whether there is anything to be seen. */
  private static boolean shows(Outcome outcome) {
    return outcome.vessels().stream()
        .anyMatch(
            vessel ->
                vessel.highestLevel() > vessel.levelBefore() + TOLERANCE
                    || Math.abs(vessel.levelAfter() - vessel.levelBefore()) > TOLERANCE);
  }

  /** Least freeboard of those vessels that gain water, even if only for a while (m). */
  private static double roomWhereItRose(Outcome outcome) {
    return outcome.vessels().stream()
        .filter(vessel -> vessel.highestLevel() > vessel.levelBefore() + DRY)
        .mapToDouble(vessel -> vessel.rim() - vessel.highestLevel())
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** How long to wait (s); nothing where it does not come to rest soon enough. */
  private static OptionalDouble waiting(Outcome outcome) {
    return switch (outcome.ending()) {
      case Ending.AtRest rest ->
          rest.time() <= LONGEST_WAIT
              ? OptionalDouble.of(Math.max(SHORTEST_WAIT, rest.time()))
              : OptionalDouble.empty();
      case Ending.Repeats repeats -> OptionalDouble.empty();
      case Ending.Continues continues -> OptionalDouble.empty();
      case Ending.StillMoving moving -> OptionalDouble.empty();
      case Ending.UpAndDown swinging -> OptionalDouble.empty();
    };
  }
}
