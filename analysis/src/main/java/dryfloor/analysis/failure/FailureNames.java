package dryfloor.analysis.failure;

import dryfloor.analysis.failure.Failure.*;
import dryfloor.model.Installation;
import java.util.List;

/** What failures are called: an id for files and reports, and words for people. */
public final class FailureNames {

  private final ComponentNames names;

  private FailureNames(Installation installation) {
    this.names = new ComponentNames(installation);
  }

  /**
   * A stable id, such as {@code power-lost.building}, {@code joint-parts.return-line.union-2} or
   * {@code half-clogged.display-standpipe}. It follows from the ids in the drawing only.
   */
  public static String id(Failure failure) {
    if (failure instanceof SequenceHappens happens) {
      return FailureIds.mode(failure) + "." + happens.sequence();
    }
    List<String> components = FailureIds.components(failure);
    String where = components.isEmpty() ? "building" : String.join(".", components);
    return FailureIds.mode(failure) + "." + where;
  }

  /**
   * A plain sentence head that a stranger understands, with the names from the drawing.
   *
   * @throws IllegalArgumentException if the failure names something that the drawing does not have
   */
  public static String name(Failure failure, Installation installation) {
    return new FailureNames(installation).name(failure);
  }

  /** What usually makes it happen, in a few words. Common practice. */
  public static String cause(Failure failure) {
    return FailureCauses.of(failure);
  }

  /** What usually helps against it here, in a few words, by what it comes to. Common practice. */
  public static String remedy(Failure failure, Installation installation, Harm harm) {
    return FailureRemedies.of(failure, installation, harm);
  }

  private String name(Failure failure) {
    return switch (failure) {
      case BuildingLosesPower f -> "Power lost in the whole building";
      case BuildingLosesPowerForAWhile f -> "Power lost in the whole building and back again";
      case PowerFlickers f -> "Power flickers: several brief outages in a row";
      case OnlyBackupRuns f -> "Power lost, and only what has a backup runs";
      case CircuitTrips f -> breaker(f.circuit()) + " trips";
      case CircuitTripsForAWhile f -> breaker(f.circuit()) + " trips and is switched on again";
      case PumpStops f -> head(f.pump(), "stops");
      case PumpRunsOn f -> head(f.pump(), "runs on when told to stop");
      case PumpDeliversHalf f -> head(f.pump(), "delivers half");
      case PumpWorksAgainstShutValve f ->
          head(f.pump(), "works against " + names.inside(f.valve()) + ", which was left shut");
      case PumpSealLeaks f -> head(f.pump(), "leaks at its seal");
      case CirculationPumpThrowsWaterOut f -> head(f.pump(), "throws water over the rim");
      case DeviceCupOverflows f -> head(f.device(), "overflows its cup");
      case DeviceLidOpens f -> head(f.device(), "clogs and its lid or housing opens");
      case DeviceConnectionLetsGo f -> head(f.device(), "loses a hose or union");
      case PurifierRunsOn f -> head(f.purifier(), "runs on and nothing shuts it off");
      case CheckValveDoesNotClose f -> head(f.checkValve(), "does not close");
      case CheckValveLeaksBack f -> head(f.checkValve(), "leaks back");
      case CheckValveStuckShut f -> head(f.checkValve(), "stuck shut");
      case SiphonBreakBlocked f -> head(f.siphonBreak(), "blocked");
      case ValveFoundOpen f -> head(f.valve(), "found open");
      case ValveFoundShut f -> head(f.valve(), "found shut");
      case PoweredValveStuckOpen f -> head(f.valve(), "stuck open");
      case PoweredValveStuckShut f -> head(f.valve(), "stuck shut");
      case PoweredValveDoesNotRest f ->
          head(f.valve(), "does not go to its rest position when the power is lost");
      case FloatValveStuckOpen f -> head(f.valve(), "stuck open");
      case FloatValveStuckShut f -> head(f.valve(), "stuck shut");
      case LevelSwitchStuckLow f -> head(f.levelSwitch(), stuckLow(f.levelSwitch()));
      case LevelSwitchStuckHigh f -> head(f.levelSwitch(), stuckHigh(f.levelSwitch()));
      case LevelSwitchChatters f -> head(f.levelSwitch(), "chatters");
      case JointParts f -> head(f.run(), "comes apart at " + names.inside(f.joint()));
      case RunPartsAtLowestPoint f -> head(f.run(), "comes apart at its lowest point");
      case JointDrips f -> head(f.run(), "drips at " + names.inside(f.joint()));
      case RunDripsAtLowestPoint f -> head(f.run(), "drips at its lowest point");
      case EndSlipsOut f -> slipsOut(f);
      case OutletSinks f -> end(f.end(), f.run()) + " sits deeper than drawn";
      case RunClogs f -> head(f.run(), clogged(f.degree()));
      case StrainerClogs f -> head(f.strainer(), clogged(f.degree()));
      case WeirClogs f -> head(f.weir(), clogged(f.degree()));
      case BasinDrainBlocked f -> head(f.run(), "blocked");
      case SeamLeaks f -> head(f.vessel(), "leaks at a seam at the bottom");
      case WallFails f -> head(f.vessel(), "bursts and loses all its water at once");
      case SupplyDoesNotShut f -> head(f.supply(), "runs on and nothing shuts it off");
      case SupplyPressureSurges f -> head(f.supply(), "surges in pressure");
      case DrainTakesNothing f -> head(f.drain(), "is backed up and takes nothing");
      case LeakSensorDoesNotAct f -> head(f.sensor(), "does not act");
      case LeakSensorActsFalsely f -> head(f.sensor(), "acts without a leak");
      case TimerDoesNotAct f -> head(f.timer(), "does not act");
      case TimerActsFalsely f -> head(f.timer(), "acts too early");
      case SwitchLeftOn f -> head(f.handSwitch(), "left on");
      case SwitchLeftOff f -> head(f.handSwitch(), "left off");
      case ValveLeftOpen f -> head(f.valve(), "left open");
      case ToppedUpWhileStopped f ->
          head(f.vessel(), "topped up by hand while the pumps stand still");
      case NobodyComesBack f -> "Nobody comes back when expected";
      case SequenceHappens f -> names.sequence(f.sequence());
    };
  }

  private String head(String component, String whatHappens) {
    return names.atStart(component) + " " + whatHappens;
  }

  private String breaker(String circuit) {
    return "Breaker of " + names.inside(circuit);
  }

  private String slipsOut(EndSlipsOut slip) {
    String vessel = names.inside(names.vesselAtEnd(slip.run(), slip.end()));
    return end(slip.end(), slip.run()) + " slips out of " + vessel;
  }

  private String end(End end, String run) {
    return switch (end) {
      case FIRST -> "Intake of " + names.inside(run);
      case SECOND -> "Outlet of " + names.inside(run);
    };
  }

  private static String clogged(Degree degree) {
    return switch (degree) {
      case FULLY -> "clogged";
      case BY_HALF -> "clogged by half";
    };
  }

  private String stuckLow(String id) {
    return switch (names.action(id)) {
      case FILLS -> "stuck calling for water";
      case EMPTIES -> "stuck and never calls for emptying";
      case STOPS_WHEN_HIGH, LOCKS_OUT_WHEN_HIGH -> "stuck and does not see high water";
      case STOPS_WHEN_LOW, LOCKS_OUT_WHEN_LOW -> "stuck as if the water were low";
    };
  }

  private String stuckHigh(String id) {
    return switch (names.action(id)) {
      case FILLS -> "stuck satisfied";
      case EMPTIES -> "stuck calling for emptying";
      case STOPS_WHEN_HIGH, LOCKS_OUT_WHEN_HIGH -> "stuck as if the water were high";
      case STOPS_WHEN_LOW, LOCKS_OUT_WHEN_LOW -> "stuck and does not see low water";
    };
  }
}
