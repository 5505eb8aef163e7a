package dryfloor.analysis.failure;

import dryfloor.analysis.failure.Failure.*;

/** What usually makes a failure happen, in a few words. All of it is common practice. */
final class FailureCauses {

  private FailureCauses() {}

  static String of(Failure failure) {
    return switch (failure) {
      case BuildingLosesPower f -> "storm, grid failure, main breaker";
      case BuildingLosesPowerForAWhile f -> "storm, grid failure, somebody at the main switch";
      case PowerFlickers f -> "storm, switching in the grid";
      case OnlyBackupRuns f -> "grid failure with a generator or battery";
      case CircuitTrips f -> "wet plug, nuisance trip of a breaker or residual-current device";
      case CircuitTripsForAWhile f -> "breaker trips and is reset";
      case PumpStops f -> "snail in the impeller, scale, burnt motor, unplugged";
      case PumpRunsOn f -> "welded relay, frozen controller, plugged into the wrong outlet";
      case PumpDeliversHalf f -> "worn impeller, scale, air";
      case PumpWorksAgainstShutValve f -> "valve not reopened after service";
      case PumpSealLeaks f -> "age, dry running, grit in the shaft seal";
      case CirculationPumpThrowsWaterOut f -> "magnet slips, knocked while cleaning";
      case DeviceCupOverflows f -> "restart, new rock, medication, soap, raised water level";
      case DeviceLidOpens f -> "outlet clogged, lid not seated, pinched O-ring";
      case DeviceConnectionLetsGo f -> "loose union, missing clamp, O-ring left on the bench";
      case PurifierRunsOn f -> "worn shut-off diaphragm, low pressure, left on";
      case CheckValveDoesNotClose f -> "shell fragment, calcium, worm tubes, weak spring";
      case CheckValveLeaksBack f -> "worn seat, grit, calcium";
      case CheckValveStuckShut f -> "calcium, installed backwards";
      case SiphonBreakBlocked f -> "algae, coralline, salt, snail";
      case ValveFoundOpen f -> "knocked, opened by mistake, not closed after service";
      case ValveFoundShut f -> "knocked, closed by mistake, not reopened after service";
      case PoweredValveStuckOpen f -> "grit under the seat, burnt coil, failed drive";
      case PoweredValveStuckShut f -> "burnt coil, scale, failed drive";
      case PoweredValveDoesNotRest f -> "grit, scale, empty capacitor or weak spring";
      case FloatValveStuckOpen f -> "snail, scale, grit";
      case FloatValveStuckShut f -> "scale, salt, float jammed";
      case LevelSwitchStuckLow f -> "snail, salt, float jammed, broken wire";
      case LevelSwitchStuckHigh f -> "snail, salt, float jammed, welded contact";
      case LevelSwitchChatters f -> "waves, bubbles, switching levels too close together";
      case JointParts f -> "not glued, dry or missing O-ring, clamp broken, vibration";
      case RunPartsAtLowestPoint f -> "knocked, frozen, pulled, split hose";
      case JointDrips f -> "pinched O-ring, poor glue, hand-tight union";
      case RunDripsAtLowestPoint f -> "hairline crack, worn hose";
      case EndSlipsOut f -> "tug on the hose, clip broken, pump restart";
      case OutletSinks f -> "fish, cleaning, loose nozzle or clip";
      case RunClogs f -> "snail, anemone, algae mat, fish, filter floss";
      case StrainerClogs f -> "leaves, algae, snail, floss";
      case WeirClogs f -> "algae, coralline, net, dead fish, sponge";
      case BasinDrainBlocked f -> "dust, salt, cable tie, capped when built";
      case SeamLeaks f -> "age, stand not level, old silicone";
      case WallFails f -> "impact, stand not level, frost, alteration work";
      case SupplyDoesNotShut f -> "grit under the seats, scale, shut-off bypassed";
      case SupplyPressureSurges f -> "night pressure, street works, failed pressure reducer";
      case DrainTakesNothing f -> "blocked sewer, lint, salt sludge, storm";
      case LeakSensorDoesNotAct f -> "empty battery, salt on the contacts, unplugged";
      case LeakSensorActsFalsely f -> "splash, condensation, a drop while cleaning";
      case TimerDoesNotAct f -> "wrong setting, frozen controller";
      case TimerActsFalsely f -> "wrong setting, frozen controller";
      case SwitchLeftOn f -> "forgot, fell asleep, phone call";
      case SwitchLeftOff f -> "forgot after cleaning or feeding";
      case ValveLeftOpen f -> "forgot, phone call, distraction";
      case ToppedUpWhileStopped f -> "levels look low while the pumps stand still";
      case NobodyComesBack f -> "travel, illness, holiday";
      case SequenceHappens f -> "its events, one after the other";
    };
  }
}
