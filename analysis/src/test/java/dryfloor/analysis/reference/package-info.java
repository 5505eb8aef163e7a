/**
 * What others published, beside what the laws give: the table of outside checks ({@code
 * values.json} in the resources of this package), the questions that its rows put to the hydraulics
 * and to the simulation, and the page {@code TRUST.md} that is written from the answers.
 *
 * <p>A row is answered by the laws of the program or by a small simulation, never by a formula
 * written here once more; what is written here is the way from the words of a source to the
 * arguments of a law, and searches by halving where a source asks the other way round. Tests of how
 * a law behaves (slopes, limits, continuity) live beside the law.
 */
@NullMarked
package dryfloor.analysis.reference;

import org.jspecify.annotations.NullMarked;
