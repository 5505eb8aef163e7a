/**
 * How high, how low, how big: the ranges of what a user may choose in which no further failure wets
 * a floor. {@link dryfloor.analysis.limit.Limits} is the way in, {@link
 * dryfloor.analysis.limit.Property} says what may be chosen. Nothing is worked out by a formula:
 * each value is drawn, let settle and asked about its failures by the simulation. No words here.
 */
@NullMarked
package dryfloor.analysis.limit;

import org.jspecify.annotations.NullMarked;
