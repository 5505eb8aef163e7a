package dryfloor.app.drawing;

import dryfloor.model.Installation;
import dryfloor.model.element.Floor;
import dryfloor.model.element.Vessel;
import dryfloor.model.element.Weir;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Which vessels stand in which, and which share a wall. */
final class VesselTree {

  private final Installation drawing;
  private final Map<String, Vessel> vessels;

  VesselTree(Installation drawing) {
    this.drawing = drawing;
    this.vessels =
        drawing.vessels().stream().collect(Collectors.toMap(Vessel::id, vessel -> vessel));
  }

  Optional<Vessel> vessel(String id) {
    return Optional.ofNullable(vessels.get(id));
  }

  /** The floor under a vessel, whatever it stands in; the first floor where there is none. */
  Floor floorUnder(Vessel vessel) {
    Set<String> seen = new HashSet<>();
    String place = vessel.standsIn();
    while (vessels.containsKey(place) && seen.add(place)) {
      place = vessels.get(place).standsIn();
    }
    return floor(place);
  }

  Floor floor(String id) {
    return drawing.floors().stream()
        .filter(floor -> floor.id().equals(id))
        .findFirst()
        .orElse(drawing.floors().getFirst());
  }

  /** Elevation of what a vessel stands on (m). */
  double support(Vessel vessel) {
    return vessel(vessel.standsIn())
        .map(Vessel::bottom)
        .orElseGet(() -> floor(vessel.standsIn()).elevation());
  }

  /** Vessels that stand in a place, neighbours with a common wall together and in order of flow. */
  List<List<Vessel>> groupsIn(String place) {
    List<Vessel> standing =
        drawing.vessels().stream().filter(vessel -> vessel.standsIn().equals(place)).toList();
    Set<String> taken = new HashSet<>();
    List<List<Vessel>> groups = new ArrayList<>();
    for (Vessel vessel : upstreamFirst(standing)) {
      if (!taken.contains(vessel.id())) {
        List<Vessel> group = new ArrayList<>();
        collect(vessel, standing, taken, group);
        groups.add(group);
      }
    }
    return groups;
  }

  /** The edge over which water passes between two neighbours, if they have one. */
  Optional<Weir> wallBetween(Vessel one, Vessel other) {
    return drawing.weirs().stream()
        .filter(weir -> joins(weir, one, other) || joins(weir, other, one))
        .filter(weir -> weir.crest() > Math.max(one.bottom(), other.bottom()))
        .findFirst();
  }

  private static boolean joins(Weir weir, Vessel from, Vessel to) {
    return weir.from().equals(from.id()) && weir.to().equals(to.id());
  }

  private List<Vessel> upstreamFirst(List<Vessel> standing) {
    return standing.stream()
        .sorted(Comparator.comparingInt(vessel -> feeders(vessel, standing)))
        .toList();
  }

  private int feeders(Vessel vessel, List<Vessel> among) {
    return (int)
        drawing.weirs().stream()
            .filter(weir -> weir.to().equals(vessel.id()))
            .filter(weir -> among.stream().anyMatch(other -> other.id().equals(weir.from())))
            .count();
  }

  private void collect(
      Vessel vessel, List<Vessel> standing, Set<String> taken, List<Vessel> group) {
    if (!taken.add(vessel.id())) {
      return;
    }
    group.add(vessel);
    standing.stream()
        .filter(other -> wallBetween(vessel, other).isPresent())
        .forEach(other -> collect(other, standing, taken, group));
  }
}
