package dryfloor.analysis.failure;

import dryfloor.analysis.failure.Failure.*;
import dryfloor.model.Installation;

/** What usually helps against a failure, in a few words. All of it is common practice. */
final class FailureRemedies {

  private FailureRemedies() {}

  static String of(Failure failure, Installation installation, Harm harm) {
    PartRemedies parts = new PartRemedies(installation, harm);
    return switch (failure) {
      case BuildingLosesPower f ->
          "keep freeboard for all that runs down; lower the running level or raise the siphon"
              + " break";
      case BuildingLosesPowerForAWhile f ->
          "keep freeboard for the restart; delay pumps that start together";
      case PowerFlickers f -> "restart delay on every pump; keep freeboard for several restarts";
      case OnlyBackupRuns f -> "put parts that need each other on the same backup";
      case CircuitTrips f ->
          "keep freeboard for all that runs down; put a pump and its overflow guard on one circuit";
      case CircuitTripsForAWhile f -> "keep freeboard for the restart; restart delay on the pump";
      case PumpStops f -> parts.pumpStops(f);
      case PumpRunsOn f -> "second, independent high-level stop in series; longest-run timer";
      case PumpDeliversHalf f ->
          "clean the pump on a schedule; compare flow with the day of hand-over";
      case PumpWorksAgainstShutValve f ->
          "tag the valve with its running position; relief or no valve there";
      case PumpSealLeaks f -> parts.seal(f);
      case CirculationPumpThrowsWaterOut f ->
          "secure the pump by a bracket and a cord; keep its outlet deep; lid at that side";
      case DeviceCupOverflows f ->
          "lead the cup to a closed container with a float stop; switch that cuts the feed";
      case DeviceLidOpens f -> parts.lid(f);
      case DeviceConnectionLetsGo f -> parts.connection(f);
      case PurifierRunsOn f ->
          "shut-off valve driven by a leak sensor; longest-run timer; never leave it running alone";
      case CheckValveDoesNotClose f ->
          parts.checkValve(
              f.checkValve(),
              "do not rely on it: siphon break or freeboard for the back-siphon",
              "test it on a schedule");
      case CheckValveLeaksBack f ->
          parts.checkValve(
              f.checkValve(),
              "do not rely on it: siphon break or freeboard",
              "clean and test it on a schedule");
      case CheckValveStuckShut f -> "test on a schedule; mount it where it can be opened";
      case SiphonBreakBlocked f ->
          "second hole or raised outlet; clean and look at it on a schedule";
      case ValveFoundOpen f -> "lock or remove the handle; tag with its position";
      case ValveFoundShut f -> "lock or remove the handle; tag with its position";
      case PoweredValveStuckOpen f ->
          "second valve in series; strainer before it; move it on a schedule";
      case PoweredValveStuckShut f -> "move it on a schedule; strainer before it";
      case PoweredValveDoesNotRest f -> "valve with a spring return; test by pulling its plug";
      case FloatValveStuckOpen f ->
          "second, independent shut-off in series; limit what the reservoir can give";
      case FloatValveStuckShut f -> "clean on a schedule; low-level stop on the pump";
      case LevelSwitchStuckLow f -> parts.stuckLow(f);
      case LevelSwitchStuckHigh f -> "clean on a schedule; low-level stop on the pump";
      case LevelSwitchChatters f -> "wider switching band; calm the water at the sensor";
      case JointParts f -> parts.joint(f);
      case RunPartsAtLowestPoint f -> parts.lowestPoint(f);
      case JointDrips f -> parts.drips(f, "look and retighten on a schedule");
      case RunDripsAtLowestPoint f -> parts.drips(f, "look at it on a schedule");
      case EndSlipsOut f -> parts.slips(f);
      case OutletSinks f -> parts.sinks(f);
      case RunClogs f -> parts.clogs(f);
      case StrainerClogs f -> "larger strainer, cleaned on a schedule; second way round it";
      case WeirClogs f -> parts.weirClogs(f);
      case BasinDrainBlocked f -> parts.drainBlocked(f);
      case SeamLeaks f -> parts.seam(f);
      case WallFails f -> parts.wall(f);
      case SupplyDoesNotShut f ->
          "normally-closed valve driven by a leak sensor; overflow to a drain; open supply only"
              + " when somebody is there";
      case SupplyPressureSurges f -> "pressure reducer; overflow to a drain";
      case DrainTakesNothing f ->
          "backwater valve; second outlet; sensor in the basin that stops the inflow";
      case LeakSensorDoesNotAct f -> "test with a wet cloth on a schedule; second sensor";
      case LeakSensorActsFalsely f ->
          "raise it off the floor by its legs; make sure that a stop harms nobody";
      case TimerDoesNotAct f -> "test on a schedule; second, independent stop";
      case TimerActsFalsely f -> "check its setting; make sure that a stop harms nobody";
      case SwitchLeftOn f -> "timer in place of a plain switch; high-level stop";
      case SwitchLeftOff f -> "timer that switches back by itself; alarm";
      case ValveLeftOpen f -> "spring-return or timed valve; high-level stop; overflow to a drain";
      case ToppedUpWhileStopped f -> "mark the level with pumps stopped; note at the filling place";
      case NobodyComesBack f ->
          "remote alarm; second person with a key; endless supplies shut before leaving";
      case SequenceHappens f -> "whatever breaks the chain at one of its events";
    };
  }
}
