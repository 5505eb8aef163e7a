/**
 * Where water can go: {@link dryfloor.model.graph.WaterGraph} is the installation as a directed
 * graph. Ways and places only; how much passes, and when, is not known here.
 */
@NullMarked
package dryfloor.model.graph;

import org.jspecify.annotations.NullMarked;
