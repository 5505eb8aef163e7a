package dryfloor.model.graph;

import java.util.Set;

/**
 * Runs that meet at junctions and therefore have to be solved together.
 *
 * @param runs their ids, at least one
 * @param junctions ids of the junctions where they meet; none for a run by itself
 */
public record HydraulicGroup(Set<String> runs, Set<String> junctions) {
  public HydraulicGroup {
    runs = Set.copyOf(runs);
    junctions = Set.copyOf(junctions);
  }
}
