/**
 * Which failures wet a floor together though each alone does not: {@link
 * dryfloor.analysis.pair.Pairs} is the way in, {@link dryfloor.analysis.pair.PairResult} what comes
 * out. Most pairs need no simulation: one of the two wets a floor already, both change the same
 * thing, or their waters never meet ({@link dryfloor.analysis.pair.Influences} says when that is
 * certain). All others are simulated like single failures. No words here, and no law of its own.
 */
@NullMarked
package dryfloor.analysis.pair;

import org.jspecify.annotations.NullMarked;
