/**
 * How high, how low, how big: the ranges of what a user may choose in which no further failure wets
 * a floor, and single changes that mend a failure. {@link dryfloor.analysis.limit.Limits} is the
 * way in to the first, {@link dryfloor.analysis.limit.Mends} to the second; {@link
 * dryfloor.analysis.limit.Property} says what may be chosen, {@link
 * dryfloor.analysis.limit.SingleChange} what may be changed or added. Nothing is worked out by a
 * formula: each value is drawn, let settle and asked about its failures by the simulation. No words
 * here but the names of what is added.
 */
@NullMarked
package dryfloor.analysis.limit;

import org.jspecify.annotations.NullMarked;
