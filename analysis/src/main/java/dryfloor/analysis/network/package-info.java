/**
 * The drawing compiled for the solver: {@link dryfloor.analysis.network.FlowNetwork} is the way in.
 *
 * <p>Everything that can hold water has become a {@link dryfloor.analysis.network.Place} with a
 * level–volume table: vessels and floors, but also the two columns that can stand in a run on
 * either side of its crest, a tee that has drained, and a device that gives its water back. Every
 * way that water can take has become a {@code Path} between two places. Failures have been built
 * in. Nothing here changes while the water moves; what changes lives in {@code simulation}.
 */
@NullMarked
package dryfloor.analysis.network;

import org.jspecify.annotations.NullMarked;
