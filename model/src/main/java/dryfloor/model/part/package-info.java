/**
 * What sits in a run of pipe: {@link dryfloor.model.part.Part} lists the kinds. A part knows where
 * along its run it sits, not which run that is.
 */
@NullMarked
package dryfloor.model.part;

import org.jspecify.annotations.NullMarked;
