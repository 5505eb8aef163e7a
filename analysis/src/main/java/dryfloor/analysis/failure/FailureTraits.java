package dryfloor.analysis.failure;

import dryfloor.analysis.failure.Failure.*;
import dryfloor.model.Installation;
import java.util.List;

/** What sort of failure one is: for pairs, for the order of lists and for worksheets. */
public final class FailureTraits {

  private FailureTraits() {}

  /** Whether it shows nothing until something else happens; such failures matter in pairs. */
  public static boolean isHidden(Failure failure, Installation installation) {
    return new HiddenFailures(installation).contain(failure);
  }

  /** Whether it is to be expected rather than feared: everything about power. */
  public static boolean isOrdinaryEvent(Failure failure) {
    return switch (failure) {
      case BuildingLosesPower f -> true;
      case BuildingLosesPowerForAWhile f -> true;
      case PowerFlickers f -> true;
      case OnlyBackupRuns f -> true;
      case CircuitTrips f -> true;
      case CircuitTripsForAWhile f -> true;
      case PumpStops f -> false;
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
      case ValveFoundShut f -> false;
      case PoweredValveStuckOpen f -> false;
      case PoweredValveStuckShut f -> false;
      case PoweredValveDoesNotRest f -> false;
      case FloatValveStuckOpen f -> false;
      case FloatValveStuckShut f -> false;
      case LevelSwitchStuckLow f -> false;
      case LevelSwitchStuckHigh f -> false;
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
      case LeakSensorActsFalsely f -> false;
      case TimerDoesNotAct f -> false;
      case TimerActsFalsely f -> false;
      case SwitchLeftOn f -> false;
      case SwitchLeftOff f -> false;
      case ValveLeftOpen f -> false;
      case ToppedUpWhileStopped f -> false;
      case NobodyComesBack f -> false;
      case SequenceHappens f -> false;
    };
  }

  /** How it shows to somebody who is there, in a few words. Common practice. */
  public static String howNoticed(Failure failure, Installation installation) {
    return isHidden(failure, installation) ? FailureSigns.NOTHING : FailureSigns.of(failure);
  }

  /**
   * Ids of the components it happens to, the wider one first (a run before its joint); empty where
   * it is the whole building or nobody in particular.
   */
  public static List<String> components(Failure failure) {
    return FailureIds.components(failure);
  }
}
