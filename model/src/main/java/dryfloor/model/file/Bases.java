package dryfloor.model.file;

import dryfloor.model.Installation;
import java.util.HashMap;
import java.util.Map;

/** Elevations (m) from which a file measures heights: storeys, floors, inside bottoms. */
record Bases(Map<String, Double> byId) {

  static Bases of(Installation installation) {
    Map<String, Double> bases = new HashMap<>();
    installation.storeys().forEach(storey -> bases.put(storey.id(), storey.elevation()));
    installation.floors().forEach(floor -> bases.put(floor.id(), floor.elevation()));
    installation.vessels().forEach(vessel -> bases.put(vessel.id(), vessel.bottom()));
    return new Bases(bases);
  }

  /**
   * Where heights of this storey, floor or vessel are measured from.
   *
   * @throws IllegalArgumentException if it is not drawn
   */
  double of(String id) {
    Double base = byId.get(id);
    if (base == null) {
      throw new IllegalArgumentException(
          "'" + id + "' is not drawn; pass the installation through its checks before writing it");
    }
    return base;
  }
}
