/**
 * What can go wrong: {@link dryfloor.analysis.failure.Failure} says it in the words of the drawing,
 * {@code FailureCatalogue} computes which failures an installation can have, {@code
 * FailureResolver} turns a failure into {@link dryfloor.analysis.failure.Effect}s, the plain
 * changes that the simulation understands. Adding a failure means a record here; the compiler then
 * names every place that must know it. No hydraulics here.
 */
@NullMarked
package dryfloor.analysis.failure;

import org.jspecify.annotations.NullMarked;
