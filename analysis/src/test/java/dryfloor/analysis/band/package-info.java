/** Tests of {@link dryfloor.analysis.band}. */
@NullMarked
package dryfloor.analysis.band;

import org.jspecify.annotations.NullMarked;
