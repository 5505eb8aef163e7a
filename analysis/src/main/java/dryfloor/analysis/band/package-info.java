/**
 * Drawings of which some values are known within limits only: {@link dryfloor.analysis.band.Bands}
 * runs them between the ends of those, and tells for each failure how bad and how good it can be.
 * No physics and no judgement of its own; every figure comes from a failure that was run.
 */
@NullMarked
package dryfloor.analysis.band;

import org.jspecify.annotations.NullMarked;
