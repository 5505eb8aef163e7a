package dryfloor.analysis.failure;

/**
 * One thing that goes wrong with one component, one circuit or one person, at time zero; or a
 * sequence of such things that the user wrote down.
 *
 * <p>The components of each record are ids of the drawing. The ids of failures ({@link
 * FailureNames#id}) are stable, so that a file can switch one off and a report can be compared with
 * an older one.
 */
public sealed interface Failure {

  // Power. Ordinary events, first in every list.

  /** The whole building loses power; circuits with a backup live on for their minutes. */
  record BuildingLosesPower() implements Failure {}

  /** The whole building loses power and gets it back. */
  record BuildingLosesPowerForAWhile() implements Failure {}

  /** Three brief outages in a row. */
  record PowerFlickers() implements Failure {}

  /** The whole building loses power and the backup keeps its circuits alive all the time. */
  record OnlyBackupRuns() implements Failure {}

  /** One circuit is cut: a breaker or a residual-current device trips. */
  record CircuitTrips(String circuit) implements Failure {}

  /** One circuit is cut and switched on again. */
  record CircuitTripsForAWhile(String circuit) implements Failure {}

  // Pumps.

  record PumpStops(String pump) implements Failure {}

  record PumpRunsOn(String pump) implements Failure {}

  record PumpDeliversHalf(String pump) implements Failure {}

  record PumpWorksAgainstShutValve(String pump, String valve) implements Failure {}

  /**
   * The shaft seal or casing of a pump that stands outside the water it draws lets water out, as
   * much as a drip.
   */
  record PumpSealLeaks(String pump) implements Failure {}

  record CirculationPumpThrowsWaterOut(String pump) implements Failure {}

  // Devices.

  /** Foam carries water over the cup; only where a pump feeds the device from a vessel. */
  record DeviceCupOverflows(String device) implements Failure {}

  record DeviceLidOpens(String device) implements Failure {}

  record DeviceConnectionLetsGo(String device) implements Failure {}

  /** A purifier's own shut-off fails, and so does everything behind it that should stop it. */
  record PurifierRunsOn(String purifier) implements Failure {}

  // Check valves, siphon breaks, valves.

  record CheckValveDoesNotClose(String checkValve) implements Failure {}

  record CheckValveLeaksBack(String checkValve) implements Failure {}

  record CheckValveStuckShut(String checkValve) implements Failure {}

  record SiphonBreakBlocked(String siphonBreak) implements Failure {}

  record ValveFoundOpen(String valve) implements Failure {}

  record ValveFoundShut(String valve) implements Failure {}

  record PoweredValveStuckOpen(String valve) implements Failure {}

  record PoweredValveStuckShut(String valve) implements Failure {}

  /** Power is lost and the valve stays as it was instead of going to its rest position. */
  record PoweredValveDoesNotRest(String valve) implements Failure {}

  // Level control.

  record FloatValveStuckOpen(String valve) implements Failure {}

  record FloatValveStuckShut(String valve) implements Failure {}

  record LevelSwitchStuckLow(String levelSwitch) implements Failure {}

  record LevelSwitchStuckHigh(String levelSwitch) implements Failure {}

  record LevelSwitchChatters(String levelSwitch) implements Failure {}

  // Runs.

  record JointParts(String run, String joint) implements Failure {}

  record RunPartsAtLowestPoint(String run) implements Failure {}

  record JointDrips(String run, String joint) implements Failure {}

  record RunDripsAtLowestPoint(String run) implements Failure {}

  record EndSlipsOut(String run, End end) implements Failure {}

  record OutletSinks(String run, End end) implements Failure {}

  // Things that clog.

  record RunClogs(String run, Degree degree) implements Failure {}

  record StrainerClogs(String strainer, Degree degree) implements Failure {}

  record WeirClogs(String weir, Degree degree) implements Failure {}

  /** The drain of a basin or floor is blocked, which nobody sees while it is dry. */
  record BasinDrainBlocked(String run) implements Failure {}

  // Vessels.

  record SeamLeaks(String vessel) implements Failure {}

  record WallFails(String vessel) implements Failure {}

  // The outside.

  record SupplyDoesNotShut(String supply) implements Failure {}

  record SupplyPressureSurges(String supply) implements Failure {}

  record DrainTakesNothing(String drain) implements Failure {}

  // Sensors and timers.

  record LeakSensorDoesNotAct(String sensor) implements Failure {}

  record LeakSensorActsFalsely(String sensor) implements Failure {}

  record TimerDoesNotAct(String timer) implements Failure {}

  record TimerActsFalsely(String timer) implements Failure {}

  // People.

  record SwitchLeftOn(String handSwitch) implements Failure {}

  record SwitchLeftOff(String handSwitch) implements Failure {}

  record ValveLeftOpen(String valve) implements Failure {}

  record ToppedUpWhileStopped(String vessel) implements Failure {}

  record NobodyComesBack() implements Failure {}

  // What the user wrote down.

  /** The events of a sequence, one after the other. */
  record SequenceHappens(String sequence) implements Failure {}

  /** Which end of a run. */
  enum End {
    FIRST,
    SECOND
  }

  /** How far something clogs. */
  enum Degree {
    FULLY,
    BY_HALF
  }
}
