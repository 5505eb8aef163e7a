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
 *     none today; none where an edge or a pipe sets the level, or where it may stand at the rim
 */
public record VesselMarks(
    String vessel,
    double bottom,
    double rim,
    double normal,
    double afterPowerLoss,
    OptionalDouble highestSafe) {}
