/**
 * What published rules and common practice have against a drawing: {@link
 * dryfloor.analysis.practice.Warnings} is the way in, {@link dryfloor.analysis.practice.Rule} lists
 * the rules with their sources. Rules about the drawing are looked up in it; rules about water are
 * put to the simulation. What cautions everybody needs is said with the answers, not here. No words
 * here but the names of sources.
 */
@NullMarked
package dryfloor.analysis.practice;

import org.jspecify.annotations.NullMarked;
