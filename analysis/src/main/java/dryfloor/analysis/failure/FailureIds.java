package dryfloor.analysis.failure;

import dryfloor.analysis.failure.Failure.*;
import java.util.List;

/** The two halves of a failure's id: what goes wrong, and with which components. */
final class FailureIds {

  private FailureIds() {}

  /** What goes wrong, in a few words with dashes. */
  static String mode(Failure failure) {
    return switch (failure) {
      case BuildingLosesPower f -> "power-lost";
      case BuildingLosesPowerForAWhile f -> "power-lost-and-back";
      case PowerFlickers f -> "power-flickers";
      case OnlyBackupRuns f -> "only-backup-runs";
      case CircuitTrips f -> "circuit-trips";
      case CircuitTripsForAWhile f -> "circuit-trips-for-a-while";
      case PumpStops f -> "pump-stops";
      case PumpRunsOn f -> "pump-runs-on";
      case PumpDeliversHalf f -> "pump-delivers-half";
      case PumpWorksAgainstShutValve f -> "pump-against-shut-valve";
      case PumpSealLeaks f -> "pump-seal-leaks";
      case CirculationPumpThrowsWaterOut f -> "throws-water-out";
      case DeviceCupOverflows f -> "cup-overflows";
      case DeviceLidOpens f -> "lid-opens";
      case DeviceConnectionLetsGo f -> "connection-lets-go";
      case PurifierRunsOn f -> "purifier-runs-on";
      case CheckValveDoesNotClose f -> "check-valve-does-not-close";
      case CheckValveLeaksBack f -> "check-valve-leaks-back";
      case CheckValveStuckShut f -> "check-valve-stuck-shut";
      case SiphonBreakBlocked f -> "siphon-break-blocked";
      case ValveFoundOpen f -> "found-open";
      case ValveFoundShut f -> "found-shut";
      case PoweredValveStuckOpen f -> "stuck-open";
      case PoweredValveStuckShut f -> "stuck-shut";
      case PoweredValveDoesNotRest f -> "does-not-rest";
      case FloatValveStuckOpen f -> "stuck-open";
      case FloatValveStuckShut f -> "stuck-shut";
      case LevelSwitchStuckLow f -> "stuck-low";
      case LevelSwitchStuckHigh f -> "stuck-high";
      case LevelSwitchChatters f -> "chatters";
      case JointParts f -> "joint-parts";
      case RunPartsAtLowestPoint f -> "parts-at-lowest-point";
      case JointDrips f -> "joint-drips";
      case RunDripsAtLowestPoint f -> "drips-at-lowest-point";
      case EndSlipsOut f -> end(f.end()) + "-slips-out";
      case OutletSinks f -> end(f.end()) + "-sinks";
      case RunClogs f -> clogged(f.degree());
      case StrainerClogs f -> clogged(f.degree());
      case WeirClogs f -> clogged(f.degree());
      case BasinDrainBlocked f -> "basin-drain-blocked";
      case SeamLeaks f -> "seam-leaks";
      case WallFails f -> "wall-fails";
      case SupplyDoesNotShut f -> "supply-does-not-shut";
      case SupplyPressureSurges f -> "supply-pressure-surges";
      case DrainTakesNothing f -> "drain-takes-nothing";
      case LeakSensorDoesNotAct f -> "does-not-act";
      case LeakSensorActsFalsely f -> "acts-falsely";
      case TimerDoesNotAct f -> "does-not-act";
      case TimerActsFalsely f -> "acts-falsely";
      case SwitchLeftOn f -> "left-on";
      case SwitchLeftOff f -> "left-off";
      case ValveLeftOpen f -> "left-open";
      case ToppedUpWhileStopped f -> "topped-up-while-stopped";
      case NobodyComesBack f -> "nobody-comes-back";
      case SequenceHappens f -> "sequence";
    };
  }

  /** Ids of the components it happens to, the wider one first; none for the whole building. */
  static List<String> components(Failure failure) {
    return switch (failure) {
      case BuildingLosesPower f -> List.of();
      case BuildingLosesPowerForAWhile f -> List.of();
      case PowerFlickers f -> List.of();
      case OnlyBackupRuns f -> List.of();
      case CircuitTrips f -> List.of(f.circuit());
      case CircuitTripsForAWhile f -> List.of(f.circuit());
      case PumpStops f -> List.of(f.pump());
      case PumpRunsOn f -> List.of(f.pump());
      case PumpDeliversHalf f -> List.of(f.pump());
      case PumpWorksAgainstShutValve f -> List.of(f.pump(), f.valve());
      case PumpSealLeaks f -> List.of(f.pump());
      case CirculationPumpThrowsWaterOut f -> List.of(f.pump());
      case DeviceCupOverflows f -> List.of(f.device());
      case DeviceLidOpens f -> List.of(f.device());
      case DeviceConnectionLetsGo f -> List.of(f.device());
      case PurifierRunsOn f -> List.of(f.purifier());
      case CheckValveDoesNotClose f -> List.of(f.checkValve());
      case CheckValveLeaksBack f -> List.of(f.checkValve());
      case CheckValveStuckShut f -> List.of(f.checkValve());
      case SiphonBreakBlocked f -> List.of(f.siphonBreak());
      case ValveFoundOpen f -> List.of(f.valve());
      case ValveFoundShut f -> List.of(f.valve());
      case PoweredValveStuckOpen f -> List.of(f.valve());
      case PoweredValveStuckShut f -> List.of(f.valve());
      case PoweredValveDoesNotRest f -> List.of(f.valve());
      case FloatValveStuckOpen f -> List.of(f.valve());
      case FloatValveStuckShut f -> List.of(f.valve());
      case LevelSwitchStuckLow f -> List.of(f.levelSwitch());
      case LevelSwitchStuckHigh f -> List.of(f.levelSwitch());
      case LevelSwitchChatters f -> List.of(f.levelSwitch());
      case JointParts f -> List.of(f.run(), f.joint());
      case RunPartsAtLowestPoint f -> List.of(f.run());
      case JointDrips f -> List.of(f.run(), f.joint());
      case RunDripsAtLowestPoint f -> List.of(f.run());
      case EndSlipsOut f -> List.of(f.run());
      case OutletSinks f -> List.of(f.run());
      case RunClogs f -> List.of(f.run());
      case StrainerClogs f -> List.of(f.strainer());
      case WeirClogs f -> List.of(f.weir());
      case BasinDrainBlocked f -> List.of(f.run());
      case SeamLeaks f -> List.of(f.vessel());
      case WallFails f -> List.of(f.vessel());
      case SupplyDoesNotShut f -> List.of(f.supply());
      case SupplyPressureSurges f -> List.of(f.supply());
      case DrainTakesNothing f -> List.of(f.drain());
      case LeakSensorDoesNotAct f -> List.of(f.sensor());
      case LeakSensorActsFalsely f -> List.of(f.sensor());
      case TimerDoesNotAct f -> List.of(f.timer());
      case TimerActsFalsely f -> List.of(f.timer());
      case SwitchLeftOn f -> List.of(f.handSwitch());
      case SwitchLeftOff f -> List.of(f.handSwitch());
      case ValveLeftOpen f -> List.of(f.valve());
      case ToppedUpWhileStopped f -> List.of(f.vessel());
      case NobodyComesBack f -> List.of();
      case SequenceHappens f -> List.of();
    };
  }

  private static String clogged(Degree degree) {
    return switch (degree) {
      case FULLY -> "clogged";
      case BY_HALF -> "half-clogged";
    };
  }

  private static String end(End end) {
    return switch (end) {
      case FIRST -> "first-end";
      case SECOND -> "second-end";
    };
  }
}
