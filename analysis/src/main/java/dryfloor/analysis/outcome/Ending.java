package dryfloor.analysis.outcome;

/** How a run of the simulation ended. Times in seconds after the failure. */
public sealed interface Ending {

  /**
   * Nothing moves any more but water that circulates.
   *
   * @param time from which every level stays within 1 mm of its final one
   */
  record AtRest(double time) implements Ending {}

  /**
   * It repeats itself exactly: a pump cycling on its float.
   *
   * @param since when the first whole period began
   * @param period length of one period (s)
   */
  record Repeats(double since, double period) implements Ending {}

  /**
   * Levels stand still while water from outside runs on to a drain or a floor.
   *
   * @param since from when the flow is steady
   * @param rate at which it comes in beyond what comes in when all is well (m³/s)
   */
  record Continues(double since, double rate) implements Ending {}

  /**
   * The unattended time is over and something still moves.
   *
   * @param time the unattended time
   * @param place id of the place whose level moves fastest
   * @param speed of that level (m/s, positive when rising)
   */
  record StillMoving(double time, String place, double speed) implements Ending {}
}
