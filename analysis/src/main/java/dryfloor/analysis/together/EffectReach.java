package dryfloor.analysis.together;

import dryfloor.analysis.failure.Effect;
import dryfloor.analysis.failure.Effect.*;
import dryfloor.model.Installation;
import dryfloor.model.element.CirculationPump;
import dryfloor.model.element.Control;
import dryfloor.model.element.Run;
import dryfloor.model.part.Part;
import java.util.Optional;
import java.util.stream.Stream;

/** What an effect takes hold of by itself, before any water moves. */
final class EffectReach {

  private final Installation installation;
  private final Dependence dependence;

  EffectReach(Installation installation, Dependence dependence) {
    this.installation = installation;
    this.dependence = dependence;
  }

  /** Whether it changes something that everything depends on. */
  static boolean isEverywhere(Effect effect) {
    return effect instanceof AwayTimes || effect instanceof AwayFrom;
  }

  /** What it takes hold of, unless that is everything. */
  Stream<Thing> of(Effect effect) {
    return switch (effect) {
      case CircuitOff e -> poweredBy(e.circuit());
      case CircuitOn e -> poweredBy(e.circuit());
      case PumpCannotRun e -> things(e.pump());
      case IgnoresControls e -> things(e.part());
      case PumpWeakened e -> things(e.pump());
      case ValveHeld e -> things(e.valve());
      case ValveFrozen e -> things(e.valve());
      case CheckValveHeldOpen e -> things(e.checkValve());
      case CheckValveLeaks e -> things(e.checkValve());
      case CheckValveHeldShut e -> things(e.checkValve());
      case SiphonBreakHeldShut e -> things(e.siphonBreak());
      case PrimesEarly e -> things(e.run());
      case RunsPartlyFull e -> things(e.run());
      case RunNarrowed e -> things(e.run());
      case WeirNarrowed e -> things(e.weir());
      case RunParted e -> things(e.run(), e.landing());
      case RunLeaks e -> things(e.run(), e.landing());
      case EndMoved e -> things(e.run(), e.landing());
      case VesselLeaks e -> things(e.vessel(), e.landing());
      case VesselLost e -> things(e.vessel(), e.landing());
      case Thrown e -> things(e.powered(), e.vessel(), e.landing());
      case DrainTakesNothing e -> runsAt(e.drain());
      case SupplyPressureTimes e -> Stream.concat(things(e.supply()), runsAt(e.supply()));
      case SwitchHeld e -> switchedBy(e.levelSwitch());
      case SwitchBand e -> switchedBy(e.levelSwitch());
      case ControlDead e -> switchedBy(e.control());
      case ControlTripped e -> switchedBy(e.control());
      case HandSwitchSet e -> switchedBy(e.handSwitch());
      case Poured e -> things(e.vessel());
      case Taken e -> things(e.vessel());
      case AwayTimes e -> Stream.empty();
      case AwayFrom e -> Stream.empty();
      case During e -> of(e.what());
      case News e -> Stream.empty();
    };
  }

  private Stream<Thing> things(String... ids) {
    return Stream.of(ids).map(dependence::find).flatMap(Optional::stream);
  }

  private Stream<Thing> poweredBy(String circuit) {
    Stream<String> parts =
        installation.runs().stream()
            .flatMap((Run run) -> run.parts().stream())
            .filter(part -> isPoweredBy(part, circuit))
            .map(Part::id);
    Stream<String> stirrers =
        installation.circulationPumps().stream()
            .filter(pump -> pump.power().circuit().equals(circuit))
            .map(CirculationPump::id);
    return Stream.concat(parts, stirrers).map(dependence::thing);
  }

  private static boolean isPoweredBy(Part part, String circuit) {
    return switch (part) {
      case Part.Pump pump -> pump.power().circuit().equals(circuit);
      case Part.Valve valve ->
          valve.drive() instanceof Part.Valve.Drive.Powered powered
              && powered.power().circuit().equals(circuit);
      case Part.FloatValve floatValve -> false;
      case Part.CheckValve checkValve -> false;
      case Part.SiphonBreak siphonBreak -> false;
      case Part.Joint joint -> false;
      case Part.Strainer strainer -> false;
      case Part.Restrictor restrictor -> false;
      case Part.Device device -> false;
    };
  }

  private Stream<Thing> runsAt(String place) {
    return installation.runs().stream()
        .filter(run -> run.from().at().equals(place) || run.to().at().equals(place))
        .map(run -> dependence.thing(run.id()));
  }

  private Stream<Thing> switchedBy(String id) {
    return installation.controls().stream()
        .filter(control -> control.id().equals(id))
        .flatMap((Control control) -> dependence.switched(control));
  }
}
