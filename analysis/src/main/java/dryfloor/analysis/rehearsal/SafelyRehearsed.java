package dryfloor.analysis.rehearsal;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.Failure.*;

/**
 * Which kinds of failure a person can bring about and undo at once with dry hands: a breaker, a
 * plug, a valve's handle, a lifted float. Nothing is taken apart, blocked or overfilled for a
 * rehearsal. Common practice.
 */
final class SafelyRehearsed {

  private SafelyRehearsed() {}

  static boolean is(Failure failure) {
    return switch (failure) {
      case BuildingLosesPower f -> true;
      case BuildingLosesPowerForAWhile f -> true;
      case PowerFlickers f -> false;
      case OnlyBackupRuns f -> false;
      case CircuitTrips f -> true;
      case CircuitTripsForAWhile f -> true;
      case PumpStops f -> true;
      case PumpRunsOn f -> false;
      case PumpDeliversHalf f -> false;
      case PumpWorksAgainstShutValve f -> false;
      case PumpSealLeaks f -> false;
      case CirculationPumpThrowsWaterOut f -> false;
      case DeviceCupOverflows f -> false;
      case DeviceLidOpens f -> false;
      case DeviceConnectionLetsGo f -> false;
      case PurifierRunsOn f -> false;
      case CheckValveDoesNotClose f -> false;
      case CheckValveLeaksBack f -> false;
      case CheckValveStuckShut f -> false;
      case SiphonBreakBlocked f -> false;
      case ValveFoundOpen f -> false;
      case ValveFoundShut f -> true;
      case PoweredValveStuckOpen f -> false;
      case PoweredValveStuckShut f -> false;
      case PoweredValveDoesNotRest f -> false;
      case FloatValveStuckOpen f -> false;
      case FloatValveStuckShut f -> true;
      case LevelSwitchStuckLow f -> false;
      case LevelSwitchStuckHigh f -> true;
      case LevelSwitchChatters f -> false;
      case JointParts f -> false;
      case RunPartsAtLowestPoint f -> false;
      case JointDrips f -> false;
      case RunDripsAtLowestPoint f -> false;
      case EndSlipsOut f -> false;
      case OutletSinks f -> false;
      case RunClogs f -> false;
      case StrainerClogs f -> false;
      case WeirClogs f -> false;
      case BasinDrainBlocked f -> false;
      case SeamLeaks f -> false;
      case WallFails f -> false;
      case SupplyDoesNotShut f -> false;
      case SupplyPressureSurges f -> false;
      case DrainTakesNothing f -> false;
      case LeakSensorDoesNotAct f -> false;
      case LeakSensorActsFalsely f -> true;
      case TimerDoesNotAct f -> false;
      case TimerActsFalsely f -> false;
      case SwitchLeftOn f -> false;
      case SwitchLeftOff f -> true;
      case ValveLeftOpen f -> false;
      case ToppedUpWhileStopped f -> false;
      case NobodyComesBack f -> false;
    };
  }
}
