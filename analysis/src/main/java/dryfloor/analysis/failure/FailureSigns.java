package dryfloor.analysis.failure;

import dryfloor.analysis.failure.Failure.*;

/** How a failure shows to somebody who is there, in a few words. All of it is common practice. */
final class FailureSigns {

  static final String NOTHING = "nothing shows; found only by testing or looking";

  private FailureSigns() {}

  static String of(Failure failure) {
    return switch (failure) {
      case BuildingLosesPower f -> "lights and all pumps go out";
      case BuildingLosesPowerForAWhile f -> "everything stops, then starts together";
      case PowerFlickers f -> "pumps stop and start several times";
      case OnlyBackupRuns f -> "some parts run, others stand still";
      case CircuitTrips f -> "the parts of that circuit stand still";
      case CircuitTripsForAWhile f -> "the parts of that circuit stop, then start together";
      case PumpStops f -> "no flow, silence";
      case PumpRunsOn f -> "pump runs although its level is reached";
      case PumpDeliversHalf f -> "weak flow, levels drift";
      case PumpWorksAgainstShutValve f -> "no flow, pump hums and gets warm";
      case PumpSealLeaks f -> "drips or salt creep below the pump";
      case CirculationPumpThrowsWaterOut f -> "jet over the rim, wet wall";
      case DeviceCupOverflows f -> "full cup, foam, level falls";
      case DeviceLidOpens f -> "water runs from the housing, flow behind it ends";
      case DeviceConnectionLetsGo f -> "water runs from the connection";
      case PurifierRunsOn f -> "reject water runs on, vessel overfull";
      case CheckValveDoesNotClose f -> NOTHING;
      case CheckValveLeaksBack f -> NOTHING;
      case CheckValveStuckShut f -> "no flow although the pump runs";
      case SiphonBreakBlocked f -> NOTHING;
      case ValveFoundOpen f -> "unusual flow and levels";
      case ValveFoundShut f -> "no flow, levels drift";
      case PoweredValveStuckOpen f -> "flow does not end";
      case PoweredValveStuckShut f -> "no flow when it is called for";
      case PoweredValveDoesNotRest f -> "shows only when the power is lost";
      case FloatValveStuckOpen f -> "water keeps running in, level rises";
      case FloatValveStuckShut f -> "level falls and nothing runs in";
      case LevelSwitchStuckLow f -> "acts as if the water were low";
      case LevelSwitchStuckHigh f -> "acts as if the water were high";
      case LevelSwitchChatters f -> "rapid switching";
      case JointParts f -> "water runs from the joint";
      case RunPartsAtLowestPoint f -> "water runs from the pipe";
      case JointDrips f -> "drops, salt creep, damp below";
      case RunDripsAtLowestPoint f -> "drops, salt creep, damp below";
      case EndSlipsOut f -> "hose lies outside its vessel";
      case OutletSinks f -> NOTHING;
      case RunClogs f -> "level rises upstream, noise";
      case StrainerClogs f -> "level rises upstream, weak flow downstream";
      case WeirClogs f -> "level rises upstream";
      case BasinDrainBlocked f -> NOTHING;
      case SeamLeaks f -> "level falls, damp below";
      case WallFails f -> "at once, seen and heard";
      case SupplyDoesNotShut f -> "water keeps running in";
      case SupplyPressureSurges f -> "more flow than usual";
      case DrainTakesNothing f -> "water stands at the drain";
      case LeakSensorDoesNotAct f -> NOTHING;
      case LeakSensorActsFalsely f -> "everything it switches stops";
      case TimerDoesNotAct f -> NOTHING;
      case TimerActsFalsely f -> "what it switches stops too early";
      case SwitchLeftOn f -> "water keeps moving with nobody there";
      case SwitchLeftOff f -> "what it switches stands still";
      case ValveLeftOpen f -> "water keeps moving with nobody there";
      case ToppedUpWhileStopped f -> "levels too high after the restart";
      case NobodyComesBack f -> "nobody there to notice";
      case SequenceHappens f -> "as its single events show";
    };
  }
}
