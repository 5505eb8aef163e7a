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
   * The unattended time is over and something still moves. Where levels come and go, this is what
   * they do on the whole over the last cycles.
   *
   * @param time the unattended time
   * @param place id of the place whose level moves fastest
   * @param speed of that level (m/s, positive when rising)
   */
  record StillMoving(double time, String place, double speed) implements Ending {}

  /**
   * The unattended time is over and a level goes up and down, on the whole to no effect; too few
   * times to prove that it repeats itself.
   *
   * @param time the unattended time
   * @param place id of the place whose level swings most
   * @param lowest elevation of its level in the last cycles (m)
   * @param highest elevation of its level in the last cycles (m)
   * @param period of one cycle, on average (s)
   */
  record UpAndDown(double time, String place, double lowest, double highest, double period)
      implements Ending {}
}
