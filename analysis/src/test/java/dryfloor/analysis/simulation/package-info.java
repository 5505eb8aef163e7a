/**
 * The whole engine against closed forms and worked examples of textbooks: each value stands with
 * its source. No installation of the trade; those are in {@code outcome}.
 */
@NullMarked
package dryfloor.analysis.simulation;

import org.jspecify.annotations.NullMarked;
