package dryfloor.analysis.failure;

import dryfloor.analysis.failure.Failure.*;
import dryfloor.model.Installation;
import dryfloor.model.element.Control.HandSwitch;
import dryfloor.model.element.Control.LevelSwitch;
import dryfloor.model.element.Run;
import dryfloor.model.element.Weir;
import dryfloor.model.part.Part;
import java.util.List;

/**
 * Which failures show nothing until something else happens: those of guards, and those of runs,
 * weirs and drains that carry nothing in normal operation.
 */
final class HiddenFailures {

  /** A weir whose crest is this much above the declared level carries nothing (m). */
  private static final double DRY_BY = 0.005;

  private final Drawing drawing;

  HiddenFailures(Installation installation) {
    this.drawing = new Drawing(installation);
  }

  boolean contain(Failure failure) {
    return switch (failure) {
      case BuildingLosesPower f -> false;
      case BuildingLosesPowerForAWhile f -> false;
      case PowerFlickers f -> false;
      case OnlyBackupRuns f -> false;
      case CircuitTrips f -> false;
      case CircuitTripsForAWhile f -> false;
      case PumpStops f -> drawing.isInDormantRun(f.pump());
      case PumpRunsOn f -> false;
      case PumpDeliversHalf f -> drawing.isInDormantRun(f.pump());
      case PumpWorksAgainstShutValve f -> drawing.isInDormantRun(f.valve());
      case PumpSealLeaks f -> false;
      case CirculationPumpThrowsWaterOut f -> false;
      case DeviceCupOverflows f -> false;
      case DeviceLidOpens f -> false;
      case DeviceConnectionLetsGo f -> false;
      case PurifierRunsOn f -> false;
      case CheckValveDoesNotClose f -> true;
      case CheckValveLeaksBack f -> true;
      case CheckValveStuckShut f -> drawing.isInDormantRun(f.checkValve());
      case SiphonBreakBlocked f -> true;
      case ValveFoundOpen f -> false;
      case ValveFoundShut f -> drawing.isInDormantRun(f.valve());
      case PoweredValveStuckOpen f -> waitsOpen(f.valve());
      case PoweredValveStuckShut f -> waitsShut(f.valve());
      case PoweredValveDoesNotRest f -> false;
      case FloatValveStuckOpen f -> false;
      case FloatValveStuckShut f -> false;
      case LevelSwitchStuckLow f -> isUnseenWhenLow(f.levelSwitch());
      case LevelSwitchStuckHigh f -> isUnseenWhenHigh(f.levelSwitch());
      case LevelSwitchChatters f -> false;
      case JointParts f -> drawing.isDormant(drawing.run(f.run()));
      case RunPartsAtLowestPoint f -> false;
      case JointDrips f -> false;
      case RunDripsAtLowestPoint f -> false;
      case EndSlipsOut f -> drawing.isDormant(drawing.run(f.run()));
      case OutletSinks f -> true;
      case RunClogs f -> drawing.isDormant(drawing.run(f.run()));
      case StrainerClogs f -> drawing.isInDormantRun(f.strainer());
      case WeirClogs f -> isDry(drawing.element(Weir.class, f.weir()));
      case BasinDrainBlocked f -> true;
      case SeamLeaks f -> false;
      case WallFails f -> false;
      case SupplyDoesNotShut f -> false;
      case SupplyPressureSurges f -> false;
      case DrainTakesNothing f -> takesNothingNormally(f.drain());
      case LeakSensorDoesNotAct f -> true;
      case LeakSensorActsFalsely f -> false;
      case TimerDoesNotAct f -> true;
      case TimerActsFalsely f -> false;
      case SwitchLeftOn f -> false;
      case SwitchLeftOff f -> switchesOnlyDormant(f.handSwitch());
      case ValveLeftOpen f -> false;
      case ToppedUpWhileStopped f -> false;
      case NobodyComesBack f -> false;
      case SequenceHappens f -> false;
    };
  }

  /** A valve that stands open and is there to shut one day. */
  private boolean waitsOpen(String valve) {
    return drawing.part(Part.Valve.class, valve).part().opening() > 0 && !movesOften(valve);
  }

  /** A valve that stands shut and is there to open one day. */
  private boolean waitsShut(String valve) {
    return drawing.part(Part.Valve.class, valve).part().opening() <= 0 && !movesOften(valve);
  }

  /** Whether a level switch moves a valve in the ordinary course of things. */
  private boolean movesOften(String valve) {
    return drawing.installation().controls().stream()
        .anyMatch(
            control ->
                control instanceof LevelSwitch levelSwitch
                    && levelSwitch.drives().contains(valve)
                    && switch (levelSwitch.action()) {
                      case FILLS -> true;
                      case EMPTIES -> true;
                      case STOPS_WHEN_HIGH, LOCKS_OUT_WHEN_HIGH -> false;
                      case STOPS_WHEN_LOW, LOCKS_OUT_WHEN_LOW -> false;
                    });
  }

  /** A guard against high water that never feels it, or a pit pump that never starts. */
  private boolean isUnseenWhenLow(String id) {
    LevelSwitch levelSwitch = drawing.element(LevelSwitch.class, id);
    return switch (levelSwitch.action()) {
      case FILLS -> false;
      case EMPTIES -> drawing.isDryPlace(levelSwitch.vessel());
      case STOPS_WHEN_HIGH, LOCKS_OUT_WHEN_HIGH -> true;
      case STOPS_WHEN_LOW, LOCKS_OUT_WHEN_LOW -> false;
    };
  }

  /** A guard against low water that never feels it. */
  private boolean isUnseenWhenHigh(String id) {
    return switch (drawing.element(LevelSwitch.class, id).action()) {
      case FILLS -> false;
      case EMPTIES -> false;
      case STOPS_WHEN_HIGH, LOCKS_OUT_WHEN_HIGH -> false;
      case STOPS_WHEN_LOW, LOCKS_OUT_WHEN_LOW -> true;
    };
  }

  private boolean switchesOnlyDormant(String handSwitch) {
    List<String> parts = drawing.element(HandSwitch.class, handSwitch).drives();
    return !parts.isEmpty() && parts.stream().allMatch(drawing::isInDormantRun);
  }

  private boolean isDry(Weir weir) {
    double highest =
        Math.max(drawing.vessel(weir.from()).level(), drawing.vessel(weir.to()).level());
    return weir.crest() > highest + DRY_BY;
  }

  private boolean takesNothingNormally(String drain) {
    List<Run> runs =
        drawing.installation().runs().stream().filter(run -> run.to().at().equals(drain)).toList();
    return runs.stream().allMatch(drawing::isDormant);
  }
}
