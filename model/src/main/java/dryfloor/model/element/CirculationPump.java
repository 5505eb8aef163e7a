package dryfloor.model.element;

import dryfloor.model.part.Power;

/**
 * A pump that stirs one vessel and moves no water out of it, unless it is turned the wrong way.
 *
 * @param vessel id of the vessel it stirs
 * @param inlet elevation of its inlet (m)
 * @param flow that it moves (m³/s)
 */
public record CirculationPump(
    String id, String name, String vessel, double inlet, double flow, Power power)
    implements Element {}
