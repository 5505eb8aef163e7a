package dryfloor.analysis.rehearsal;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.Sweep;
import dryfloor.model.Installation;
import dryfloor.model.element.Run;
import dryfloor.model.element.Vessel;
import dryfloor.model.part.Part;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Runs a rehearsed failure again with one thing at a time otherwise than drawn. A good fit is no
 * proof: several causes may look alike, and the real one may not be among them.
 */
public final class LikelyCauses {

  private static final List<Double> LOWER = List.of(0.005, 0.010, 0.020, 0.040);
  private static final List<Double> DISPLACED = List.of(0.05, 0.10, 0.20);
  private static final List<Double> FILLED = List.of(-0.020, -0.010, 0.010, 0.020);
  private static final double STRONGER = 1.2;

  private final Installation drawing;
  private final Failure rehearsed;
  private final List<MeasuredLevel> measured;

  private LikelyCauses(Installation drawing, Failure rehearsed, List<MeasuredLevel> measured) {
    this.drawing = drawing;
    this.rehearsed = rehearsed;
    this.measured = measured;
  }

  /**
   * Causes by how well they fit, the drawing as it is among them; those without an answer last.
   *
   * @param measured levels, at least one
   */
  public static List<Cause.Ranked> of(
      Installation drawing, Failure rehearsed, List<MeasuredLevel> measured) {
    if (measured.isEmpty()) {
      throw new IllegalArgumentException("nothing was measured; give at least one level");
    }
    LikelyCauses causes = new LikelyCauses(drawing, rehearsed, List.copyOf(measured));
    return causes.candidates().stream()
        .map(cause -> new Cause.Ranked(cause, causes.misfit(cause)))
        .sorted(
            Comparator.comparingDouble(
                (Cause.Ranked ranked) ->
                    ranked.misfit().map(Cause.Misfit::average).orElse(Double.POSITIVE_INFINITY)))
        .toList();
  }

  private List<Cause> candidates() {
    List<Cause> all = new ArrayList<>(List.of(new Cause.AsDrawn()));
    for (Run run : drawing.runs()) {
      for (Part part : run.parts()) {
        if (part instanceof Part.CheckValve valve) {
          all.add(new Cause.CheckValveWorn(valve.id()));
          all.add(new Cause.CheckValveOpen(valve.id()));
        }
        if (part instanceof Part.SiphonBreak hole) {
          all.add(new Cause.SiphonBreakBlocked(hole.id()));
          LOWER.forEach(by -> all.add(new Cause.SiphonBreakLower(hole.id(), by)));
        }
        if (part instanceof Part.Pump pump && pump.speed() * STRONGER <= STRONGER) {
          all.add(new Cause.PumpStronger(pump.id(), STRONGER));
        }
      }
      if (run.duty() == Run.Duty.DRAIN) {
        all.add(new Cause.DrainHalfClogged(run.id()));
      }
    }
    for (Vessel vessel : drawing.vessels()) {
      if (!vessel.isBasin() && vessel.level() > vessel.bottom()) {
        DISPLACED.forEach(share -> all.add(new Cause.MoreDisplaced(vessel.id(), share)));
        FILLED.stream()
            .filter(by -> vessel.level() + by < vessel.rim())
            .filter(by -> vessel.level() + by > vessel.bottom())
            .forEach(by -> all.add(new Cause.FilledOtherwise(vessel.id(), by)));
      }
    }
    return all;
  }

  private Optional<Cause.Misfit> misfit(Cause cause) {
    try {
      return switch (Sweep.together(installation(cause), failures(cause))) {
        case FailureResult.Answered answered -> Optional.of(misfit(answered.outcome()));
        case FailureResult.Unanswered unanswered -> Optional.empty();
        case FailureResult.Skipped skipped -> Optional.empty();
      };
    } catch (BaselineProblem impossible) {
      return Optional.empty();
    }
  }

  private Cause.Misfit misfit(Outcome outcome) {
    List<Double> off = new ArrayList<>();
    for (MeasuredLevel level : measured) {
      Outcome.VesselOutcome computed =
          outcome.vessels().stream()
              .filter(vessel -> vessel.id().equals(level.vessel()))
              .findFirst()
              .orElseThrow();
      reading(computed, computed.levelAfter(), level.level()).ifPresent(off::add);
      level
          .before()
          .ifPresent(
              before -> reading(computed, computed.levelBefore(), before).ifPresent(off::add));
    }
    return Cause.Misfit.of(off);
  }

  /** By how much a reading is off (m); nothing where both are dry, which any cause explains. */
  private static Optional<Double> reading(
      Outcome.VesselOutcome vessel, double computed, double measured) {
    double dry = vessel.bottom() + Rehearsal.DRY;
    return computed < dry && measured < dry
        ? Optional.empty()
        : Optional.of(Math.abs(computed - measured));
  }

  private List<Failure> failures(Cause cause) {
    return switch (cause) {
      case Cause.AsDrawn none -> List.of(rehearsed);
      case Cause.CheckValveWorn worn ->
          List.of(rehearsed, new Failure.CheckValveLeaksBack(worn.checkValve()));
      case Cause.CheckValveOpen open ->
          List.of(rehearsed, new Failure.CheckValveDoesNotClose(open.checkValve()));
      case Cause.SiphonBreakBlocked blocked ->
          List.of(rehearsed, new Failure.SiphonBreakBlocked(blocked.siphonBreak()));
      case Cause.SiphonBreakLower lower -> List.of(rehearsed);
      case Cause.MoreDisplaced displaced -> List.of(rehearsed);
      case Cause.FilledOtherwise filled -> List.of(rehearsed);
      case Cause.PumpStronger stronger -> List.of(rehearsed);
      case Cause.DrainHalfClogged clogged ->
          List.of(rehearsed, new Failure.RunClogs(clogged.run(), Failure.Degree.BY_HALF));
    };
  }

  private Installation installation(Cause cause) {
    return switch (cause) {
      case Cause.AsDrawn none -> drawing;
      case Cause.CheckValveWorn worn -> drawing;
      case Cause.CheckValveOpen open -> drawing;
      case Cause.SiphonBreakBlocked blocked -> drawing;
      case Cause.SiphonBreakLower lower -> OtherwiseDrawn.siphonBreakLower(drawing, lower);
      case Cause.MoreDisplaced displaced -> OtherwiseDrawn.moreDisplaced(drawing, displaced);
      case Cause.FilledOtherwise filled -> OtherwiseDrawn.filled(drawing, filled);
      case Cause.PumpStronger stronger -> OtherwiseDrawn.pumpStronger(drawing, stronger);
      case Cause.DrainHalfClogged clogged -> drawing;
    };
  }
}
