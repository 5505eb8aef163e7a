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
 * @param highestSafe highest level in normal operation from which a power loss still keeps all
 *     water in its vessels; none where a power loss does not raise this vessel, where an overflow
 *     edge and not the filling sets its level, or where no level is low enough
 */
public record VesselMarks(
    String vessel,
    double bottom,
    double rim,
    double normal,
    double afterPowerLoss,
    OptionalDouble highestSafe) {}
