/** How far things can be changed: limits against sums on paper. */
@NullMarked
package dryfloor.analysis.limit;

import org.jspecify.annotations.NullMarked;
