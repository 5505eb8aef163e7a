package dryfloor.analysis.rehearsal;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.Failure.*;
import java.util.Optional;

/**
 * Which kinds of failure a person can bring about and undo, and how. Nothing is taken apart,
 * blocked or overfilled for a rehearsal. Common practice.
 */
final class SafeMeans {

  private static final Optional<Means> NONE = Optional.empty();

  private SafeMeans() {}

  /** How to bring it about; nothing where that is not safe. */
  static Optional<Means> of(Failure failure) {
    return switch (failure) {
      case BuildingLosesPower f -> Optional.of(Means.BREAKER);
      case BuildingLosesPowerForAWhile f -> Optional.of(Means.BREAKER);
      case PowerFlickers f -> NONE;
      case OnlyBackupRuns f -> NONE;
      case CircuitTrips f -> Optional.of(Means.BREAKER);
      case CircuitTripsForAWhile f -> Optional.of(Means.BREAKER);
      case PumpStops f -> Optional.of(Means.PLUG);
      case PumpRunsOn f -> NONE;
      case PumpDeliversHalf f -> NONE;
      case PumpWorksAgainstShutValve f -> NONE;
      case PumpSealLeaks f -> NONE;
      case CirculationPumpThrowsWaterOut f -> NONE;
      case DeviceCupOverflows f -> NONE;
      case DeviceLidOpens f -> NONE;
      case DeviceConnectionLetsGo f -> NONE;
      case PurifierRunsOn f -> NONE;
      case CheckValveDoesNotClose f -> NONE;
      case CheckValveLeaksBack f -> NONE;
      case CheckValveStuckShut f -> NONE;
      case SiphonBreakBlocked f -> NONE;
      case ValveFoundOpen f -> NONE;
      case ValveFoundShut f -> Optional.of(Means.HANDLE);
      case PoweredValveStuckOpen f -> NONE;
      case PoweredValveStuckShut f -> NONE;
      case PoweredValveDoesNotRest f -> NONE;
      case FloatValveStuckOpen f -> NONE;
      case FloatValveStuckShut f -> Optional.of(Means.FLOAT);
      case LevelSwitchStuckLow f -> NONE;
      case LevelSwitchStuckHigh f -> Optional.of(Means.FLOAT);
      case LevelSwitchChatters f -> NONE;
      case JointParts f -> NONE;
      case RunPartsAtLowestPoint f -> NONE;
      case JointDrips f -> NONE;
      case RunDripsAtLowestPoint f -> NONE;
      case EndSlipsOut f -> NONE;
      case OutletSinks f -> NONE;
      case RunClogs f -> NONE;
      case StrainerClogs f -> NONE;
      case WeirClogs f -> NONE;
      case BasinDrainBlocked f -> NONE;
      case SeamLeaks f -> NONE;
      case WallFails f -> NONE;
      case SupplyDoesNotShut f -> NONE;
      case SupplyPressureSurges f -> NONE;
      case DrainTakesNothing f -> NONE;
      case LeakSensorDoesNotAct f -> NONE;
      case LeakSensorActsFalsely f -> Optional.of(Means.WET_CLOTH);
      case TimerDoesNotAct f -> NONE;
      case TimerActsFalsely f -> NONE;
      case SwitchLeftOn f -> NONE;
      case SwitchLeftOff f -> Optional.of(Means.PLUG);
      case ValveLeftOpen f -> NONE;
      case ToppedUpWhileStopped f -> NONE;
      case NobodyComesBack f -> NONE;
      case SequenceHappens f -> NONE;
    };
  }
}
