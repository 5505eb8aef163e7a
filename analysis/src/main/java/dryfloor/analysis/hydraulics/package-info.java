/**
 * The physical laws, each in one place: what water weighs, what a pipe, a valve, a hole, a weir, a
 * lip and a pump do to it, and when a siphon holds or lets go.
 *
 * <p>Everything here is a pure function of numbers in SI units. Nothing here knows a drawing, a
 * failure, a clock or a network; laws that tie several of these together belong to their callers.
 */
@NullMarked
package dryfloor.analysis.hydraulics;

import org.jspecify.annotations.NullMarked;
