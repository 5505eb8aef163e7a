/**
 * The installation as it is drawn: {@link dryfloor.model.Installation} is the way in.
 *
 * <p>Everything below this package is an immutable value in SI units (m, m², m³, m³/s, Pa, s,
 * g/kg), elevations being metres above the datum of the building. The model knows shapes and the
 * drawing's own consistency; it knows no physics and never moves water.
 */
@NullMarked
package dryfloor.model;

import org.jspecify.annotations.NullMarked;
