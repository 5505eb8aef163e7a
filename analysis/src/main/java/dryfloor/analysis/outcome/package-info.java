/**
 * What is left when all is still: {@link dryfloor.analysis.outcome.Outcome} is the way in. Values
 * only, in SI units, worded by nobody: reports choose the words.
 */
@NullMarked
package dryfloor.analysis.outcome;

import org.jspecify.annotations.NullMarked;
