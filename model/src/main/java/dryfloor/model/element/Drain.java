package dryfloor.model.element;

import java.util.OptionalDouble;

/**
 * A way out of the building, endless.
 *
 * @param elevation of its inlet (m)
 * @param surchargeLevel elevation to which it can back up (m), for a drain that is known to
 */
public record Drain(String id, String name, double elevation, OptionalDouble surchargeLevel)
    implements Element {}
