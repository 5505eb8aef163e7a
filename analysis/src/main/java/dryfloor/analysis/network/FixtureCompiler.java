package dryfloor.analysis.network;

import dryfloor.analysis.failure.Effect;
import dryfloor.analysis.hydraulics.PumpCurve;
import dryfloor.analysis.hydraulics.Siphon;
import dryfloor.analysis.hydraulics.ValveLoss;
import dryfloor.model.element.Run;
import dryfloor.model.part.Part;
import java.util.List;
import java.util.Optional;

/** Compiles the parts of runs into what they are to the flow, failures built in. */
final class FixtureCompiler {

  /** A valve opened less than this is shut. */
  private static final double SHUT = 1e-4;

  private final Effects effects;
  private final Registry registry;

  FixtureCompiler(Effects effects, Registry registry) {
    this.effects = effects;
    this.registry = registry;
  }

  /** Adds what a part of a piece of a run is to the flow, if it is anything to it. */
  void add(Run run, RunPiece piece, Part part, List<PipeFixture> fixtures) {
    double along = piece.along(part);
    double bore = run.bore();
    switch (part) {
      case Part.Pump pump ->
          fixtures.add(
              new PipeFixture.PumpFixture(
                  along, registry.part(pump.id()), curve(pump), stoppedLoss(pump)));
      case Part.Valve valve -> fixtures.add(valve(valve, along, bore));
      case Part.FloatValve floatValve -> fixtures.add(floatValve(floatValve, along, bore));
      case Part.CheckValve check -> addCheck(check, along, fixtures);
      case Part.SiphonBreak hole -> {
        if (isOpen(hole, run)) {
          fixtures.add(
              new PipeFixture.HoleFixture(
                  piece.along(hole.elevation(), along),
                  hole.id(),
                  hole.elevation(),
                  hole.diameter(),
                  hole.coveredBy().map(registry::place).orElse(-1)));
        }
      }
      case Part.Joint joint -> {}
      case Part.Strainer strainer ->
          fixtures.add(new PipeFixture.FixedFixture(along, strainer.loss()));
      case Part.Restrictor restrictor ->
          fixtures.add(
              new PipeFixture.FixedFixture(along, ValveLoss.fittingsOf(restrictor.kv(), bore)));
      case Part.Device device -> fixtures.add(new PipeFixture.FixedFixture(along, device.loss()));
    }
  }

  private boolean isOpen(Part.SiphonBreak hole, Run run) {
    double area = hole.count() * Math.PI / 4 * hole.diameter() * hole.diameter();
    boolean held =
        effects.has(Effect.SiphonBreakHeldShut.class, e -> e.siphonBreak().equals(hole.id()));
    return !held && Siphon.breakHole(area, run.boreArea()) != Siphon.BreakHole.TOO_SMALL;
  }

  private PumpCurve curve(Part.Pump pump) {
    PumpCurve curve =
        PumpCurve.through(
                pump.curve().stream().mapToDouble(Part.Pump.CurvePoint::flow).toArray(),
                pump.curve().stream().mapToDouble(Part.Pump.CurvePoint::head).toArray())
            .atSpeed(pump.speed());
    return effects
        .first(Effect.PumpWeakened.class, e -> e.pump().equals(pump.id()))
        .map(weakened -> curve.withFlowScaled(weakened.fraction()))
        .orElse(curve);
  }

  private static double stoppedLoss(Part.Pump pump) {
    return switch (pump.kind()) {
      case CENTRIFUGAL -> pump.stoppedLoss();
      case DISPLACEMENT -> Double.POSITIVE_INFINITY;
    };
  }

  private PipeFixture valve(Part.Valve valve, double along, double bore) {
    Optional<Double> held = heldOpening(valve.id());
    if (held.isEmpty() && valve.drive() instanceof Part.Valve.Drive.Powered) {
      return new PipeFixture.PoweredValveFixture(along, registry.part(valve.id()), valve.kv());
    }
    return fixed(along, valve.kv(), held.orElse(valve.opening()), bore);
  }

  private PipeFixture floatValve(Part.FloatValve valve, double along, double bore) {
    Optional<Double> held = heldOpening(valve.id());
    if (held.isPresent()) {
      return fixed(along, valve.kv(), held.get(), bore);
    }
    return new PipeFixture.FloatFixture(
        along, valve.kv(), registry.place(valve.vessel()), valve.closesAt(), valve.band());
  }

  private Optional<Double> heldOpening(String valve) {
    return effects
        .first(Effect.ValveHeld.class, e -> e.valve().equals(valve))
        .map(Effect.ValveHeld::opening);
  }

  private static PipeFixture fixed(double along, double kv, double opening, double bore) {
    return opening < SHUT
        ? new PipeFixture.BlockedFixture(along)
        : new PipeFixture.FixedFixture(
            along, ValveLoss.fittingsOf(ValveLoss.kvAtOpening(kv, opening), bore));
  }

  private void addCheck(Part.CheckValve check, double along, List<PipeFixture> fixtures) {
    if (effects.has(Effect.CheckValveHeldShut.class, e -> e.checkValve().equals(check.id()))) {
      fixtures.add(new PipeFixture.BlockedFixture(along));
    } else if (effects.has(
        Effect.CheckValveHeldOpen.class, e -> e.checkValve().equals(check.id()))) {
      fixtures.add(new PipeFixture.FixedFixture(along, check.loss()));
    } else {
      double leak =
          effects
              .first(Effect.CheckValveLeaks.class, e -> e.checkValve().equals(check.id()))
              .map(Effect.CheckValveLeaks::area)
              .orElse(0.0);
      fixtures.add(new PipeFixture.CheckFixture(along, check.crackingHead(), check.loss(), leak));
    }
  }
}
