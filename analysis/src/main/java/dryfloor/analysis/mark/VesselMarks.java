package dryfloor.analysis.mark;

import java.util.OptionalDouble;

/**
 * The marks of one vessel, all of them elevations (m).
 *
 * @param vessel its id
 * @param bottom inside bottom
 * @param rim rim
 * @param normal level in normal operation
 * @param afterPowerLoss level once all is still after a power loss
 * @param highestSafe highest level in normal operation at which no failure wets a floor that wets
 *     none today; none where an edge or a pipe sets the level, where it may stand at the rim, or
 *     where a power loss wets a floor from here at the normal level already
 * @param powerLoss what a power loss does that begins at the normal level
 */
public record VesselMarks(
    String vessel,
    double bottom,
    double rim,
    double normal,
    double afterPowerLoss,
    OptionalDouble highestSafe,
    PowerLoss powerLoss) {

  /** Whether this vessel keeps its water in a power loss, and what becomes of the floors. */
  public enum PowerLoss {
    /** The vessel keeps its water, and every floor stays dry. */
    KEEPS,
    /** The vessel keeps its water; a floor gets wet from elsewhere. */
    KEEPS_WHILE_A_FLOOR_GETS_WET,
    /** It runs over, and what runs over stays off the floors. */
    RUNS_OVER,
    /** It runs over, and what runs over reaches a floor. */
    WETS_A_FLOOR
  }
}
