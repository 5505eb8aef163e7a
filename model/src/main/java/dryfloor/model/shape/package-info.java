/**
 * Outlines of vessels, level to volume: {@link dryfloor.model.shape.Shape} is the way in. Geometry
 * only; where a vessel stands and what it holds is not known here.
 */
@NullMarked
package dryfloor.model.shape;

import org.jspecify.annotations.NullMarked;
