package dryfloor.analysis.failure;

import dryfloor.analysis.failure.Failure.*;
import dryfloor.model.FailureSettings.HandTopUp;
import dryfloor.model.Installation;
import dryfloor.model.Sequence;
import dryfloor.model.element.CirculationPump;
import dryfloor.model.element.Vessel;
import dryfloor.model.part.Part;
import java.util.List;
import java.util.stream.Stream;

/**
 * Turns failures into the plain changes that the simulation understands.
 *
 * <p>Numbers that neither the drawing nor its failure settings give are common practice and stand
 * here by name. Where water lands on its way is decided in {@link Landing}; what a vessel loses
 * lands in what it stands in.
 */
public final class FailureResolver {

  /** A seam that opens by 0.1 mm over 200 mm (m²). Common practice. */
  static final double SEAM_AREA = 20e-6;

  /** How far a worn check valve stays open, as a share of the bore. Common practice. */
  static final double WORN_CHECK_VALVE = 0.05;

  /** Band within which a level switch chatters (m). Common practice. */
  static final double CHATTER_BAND = 0.002;

  /** A person tops up after the water has come to rest, 20 minutes after the stop (s). */
  static final double TOP_UP_AT = 1200;

  /** A person leaves everything off for half an hour at least when topping up (s). */
  static final double SHORTEST_STOP_FOR_TOP_UP = 1800;

  private final Drawing drawing;
  private final Installation installation;
  private final RunEffects runs;

  private FailureResolver(Installation installation) {
    this.installation = installation;
    this.drawing = new Drawing(installation);
    this.runs = new RunEffects(drawing);
  }

  /**
   * What one failure changes.
   *
   * @throws IllegalArgumentException if it names something that the drawing does not have
   */
  public static List<Effect> resolve(Installation installation, Failure failure) {
    return new FailureResolver(installation).effects(failure);
  }

  /**
   * What several failures at once change: all that each of them changes, without repeats.
   *
   * @throws IllegalArgumentException if one names something that the drawing does not have
   */
  public static List<Effect> resolve(Installation installation, List<Failure> failures) {
    FailureResolver resolver = new FailureResolver(installation);
    return failures.stream()
        .flatMap(failure -> resolver.effects(failure).stream())
        .distinct()
        .toList();
  }

  private List<Effect> effects(Failure failure) {
    return switch (failure) {
      case BuildingLosesPower f -> PowerCuts.forGood(installation);
      case BuildingLosesPowerForAWhile f ->
          PowerCuts.between(installation, 0, installation.failureSettings().outage()).toList();
      case PowerFlickers f -> PowerCuts.flickers(installation);
      case OnlyBackupRuns f -> PowerCuts.onlyBackup(installation);
      case CircuitTrips f -> List.of(new Effect.CircuitOff(f.circuit(), 0));
      case CircuitTripsForAWhile f ->
          List.of(
              new Effect.CircuitOff(f.circuit(), 0),
              new Effect.CircuitOn(f.circuit(), installation.failureSettings().outage()));
      case PumpStops f -> List.of(new Effect.PumpCannotRun(f.pump()));
      case PumpRunsOn f -> List.of(new Effect.IgnoresControls(f.pump()));
      case PumpDeliversHalf f -> List.of(new Effect.PumpWeakened(f.pump(), 0.5));
      case PumpWorksAgainstShutValve f -> held(f.valve(), 0);
      case PumpSealLeaks f -> runs.sealLeaks(f.pump());
      case CirculationPumpThrowsWaterOut f -> List.of(thrown(f.pump()));
      case DeviceCupOverflows f -> runs.cupOverflows(f.device()).stream().toList();
      case DeviceLidOpens f -> runs.lidOpens(f.device());
      case DeviceConnectionLetsGo f -> runs.connectionLetsGo(f.device());
      case PurifierRunsOn f ->
          new Downstream(drawing).nothingShuts(drawing.part(Part.Device.class, f.purifier()).run());
      case CheckValveDoesNotClose f -> List.of(new Effect.CheckValveHeldOpen(f.checkValve()));
      case CheckValveLeaksBack f -> List.of(leaksBack(f.checkValve()));
      case CheckValveStuckShut f -> List.of(new Effect.CheckValveHeldShut(f.checkValve()));
      case SiphonBreakBlocked f -> List.of(new Effect.SiphonBreakHeldShut(f.siphonBreak()));
      case ValveFoundOpen f -> held(f.valve(), 1);
      case ValveFoundShut f -> held(f.valve(), 0);
      case PoweredValveStuckOpen f -> held(f.valve(), 1);
      case PoweredValveStuckShut f -> held(f.valve(), 0);
      case PoweredValveDoesNotRest f ->
          Stream.concat(
                  Stream.of(new Effect.ValveFrozen(f.valve())),
                  PowerCuts.forGood(installation).stream())
              .toList();
      case FloatValveStuckOpen f -> held(f.valve(), 1);
      case FloatValveStuckShut f -> held(f.valve(), 0);
      case LevelSwitchStuckLow f -> List.of(new Effect.SwitchHeld(f.levelSwitch(), true));
      case LevelSwitchStuckHigh f -> List.of(new Effect.SwitchHeld(f.levelSwitch(), false));
      case LevelSwitchChatters f -> List.of(new Effect.SwitchBand(f.levelSwitch(), CHATTER_BAND));
      case JointParts f -> runs.parts(f.joint());
      case RunPartsAtLowestPoint f -> runs.partsAtLowestPoint(f.run());
      case JointDrips f -> runs.drips(f.joint());
      case RunDripsAtLowestPoint f -> runs.dripsAtLowestPoint(f.run());
      case EndSlipsOut f -> runs.slipsOut(f.run(), f.end());
      case OutletSinks f -> runs.sinks(f.run(), f.end());
      case RunClogs f -> List.of(new Effect.RunNarrowed(f.run(), free(f.degree())));
      case StrainerClogs f -> {
        String run = drawing.part(Part.Strainer.class, f.strainer()).run().id();
        yield List.of(new Effect.RunNarrowed(run, free(f.degree())));
      }
      case WeirClogs f -> List.of(new Effect.WeirNarrowed(f.weir(), free(f.degree())));
      case BasinDrainBlocked f -> List.of(new Effect.RunNarrowed(f.run(), 0));
      case SeamLeaks f -> {
        Vessel vessel = drawing.vessel(f.vessel());
        yield List.of(
            new Effect.VesselLeaks(vessel.id(), vessel.bottom(), SEAM_AREA, vessel.standsIn()));
      }
      case WallFails f ->
          List.of(new Effect.VesselLost(f.vessel(), drawing.vessel(f.vessel()).standsIn()));
      case SupplyDoesNotShut f -> new Downstream(drawing).nothingShuts(f.supply());
      case SupplyPressureSurges f ->
          List.of(
              new Effect.SupplyPressureTimes(f.supply(), installation.failureSettings().surge()));
      case DrainTakesNothing f -> List.of(new Effect.DrainTakesNothing(f.drain()));
      case LeakSensorDoesNotAct f -> List.of(new Effect.ControlDead(f.sensor()));
      case LeakSensorActsFalsely f -> List.of(new Effect.ControlTripped(f.sensor()));
      case TimerDoesNotAct f -> List.of(new Effect.ControlDead(f.timer()));
      case TimerActsFalsely f -> List.of(new Effect.ControlTripped(f.timer()));
      case SwitchLeftOn f -> List.of(new Effect.HandSwitchSet(f.handSwitch(), true));
      case SwitchLeftOff f -> List.of(new Effect.HandSwitchSet(f.handSwitch(), false));
      case ValveLeftOpen f -> held(f.valve(), 1);
      case ToppedUpWhileStopped f -> toppedUp(f.vessel());
      case NobodyComesBack f -> List.of(new Effect.AwayTimes(2));
      case SequenceHappens f -> sequence(drawing.sequence(f.sequence()));
    };
  }

  private List<Effect> sequence(Sequence sequence) {
    return SequenceEffects.of(sequence, id -> effects(EventFailures.named(installation, id)));
  }

  private static List<Effect> held(String valve, double opening) {
    return List.of(new Effect.ValveHeld(valve, opening));
  }

  private static double free(Degree degree) {
    return switch (degree) {
      case FULLY -> 0;
      case BY_HALF -> 0.5;
    };
  }

  private Effect thrown(String id) {
    CirculationPump pump = drawing.element(CirculationPump.class, id);
    String landing = drawing.vessel(pump.vessel()).standsIn();
    return new Effect.Thrown(pump.vessel(), pump.inlet(), pump.flow(), pump.id(), landing);
  }

  private Effect leaksBack(String checkValve) {
    double bore = drawing.part(Part.CheckValve.class, checkValve).run().boreArea();
    return new Effect.CheckValveLeaks(checkValve, WORN_CHECK_VALVE * bore);
  }

  /** Everything off, all that is to be added poured in once the water is still, everything on. */
  private List<Effect> toppedUp(String vessel) {
    double volume =
        installation.failureSettings().topUps().stream()
            .filter(topUp -> topUp.vessel().equals(vessel))
            .mapToDouble(HandTopUp::volume)
            .sum();
    double on = Math.max(installation.failureSettings().outage(), SHORTEST_STOP_FOR_TOP_UP);
    return Stream.concat(
            PowerCuts.byHandUntil(installation, on),
            Stream.of(new Effect.Poured(vessel, volume, TOP_UP_AT)))
        .toList();
  }
}
