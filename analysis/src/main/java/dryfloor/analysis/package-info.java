/**
 * What the water does. The packages go in the order of the computation: {@code hydraulics} (the
 * laws), {@code network} (the drawing compiled for the solver), {@code failure} (what can go wrong,
 * and what that changes), {@code simulation} (time), {@code outcome} (what is left when all is
 * still), {@code sweep} (every failure of one installation; the way in for callers).
 *
 * <p>Deterministic, without files, screens or clocks.
 */
@NullMarked
package dryfloor.analysis;

import org.jspecify.annotations.NullMarked;
