/**
 * Which failures wet a floor together though each alone does not: {@link
 * dryfloor.analysis.together.Pairs} is the way in, {@link dryfloor.analysis.together.PairResult}
 * what comes out. Most pairs need no simulation: one of the two wets a floor already, both change
 * the same thing, or their waters never meet ({@link dryfloor.analysis.together.Influences} says
 * when that is certain). All others are simulated like single failures. No words here, and no law
 * of its own.
 */
@NullMarked
package dryfloor.analysis.together;

import org.jspecify.annotations.NullMarked;
