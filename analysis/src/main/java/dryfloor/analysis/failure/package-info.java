/**
 * What can go wrong: {@link dryfloor.analysis.failure.Failure} says it in the words of the drawing,
 * {@code FailureCatalogue} computes which failures an installation can have, {@code
 * FailureResolver} turns a failure into {@link dryfloor.analysis.failure.Effect}s, the plain
 * changes that the simulation understands. {@code FailureNames} and {@code FailureTraits} hold the
 * words and the sorts. Adding a failure means a record here; the compiler then names every place
 * that must know it. No hydraulics here.
 */
@NullMarked
package dryfloor.analysis.failure;

import org.jspecify.annotations.NullMarked;
