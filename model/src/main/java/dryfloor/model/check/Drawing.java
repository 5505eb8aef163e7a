package dryfloor.model.check;

import dryfloor.model.Installation;
import dryfloor.model.element.Element;
import dryfloor.model.element.Floor;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.element.Storey;
import dryfloor.model.element.Vessel;
import dryfloor.model.part.Part;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * An installation under check, its elements found by id.
 *
 * @param points elevations of junctions, supplies and drains (m)
 * @param runs by the places where they begin and end
 * @param unread ids of things that are drawn but could not be read; nothing is said about them
 */
record Drawing(
    Installation installation,
    Map<String, Vessel> vessels,
    Map<String, Floor> floors,
    Map<String, Part> parts,
    Map<String, Double> points,
    Map<String, List<Run>> runs,
    Set<String> unread) {

  static Drawing of(Installation installation, Set<String> unread) {
    Map<String, Part> parts = new HashMap<>();
    installation.runs().stream()
        .flatMap(run -> run.parts().stream())
        .forEach(part -> parts.putIfAbsent(part.id(), part));
    Map<String, Double> points = new HashMap<>();
    installation.junctions().forEach(point -> points.put(point.id(), point.elevation()));
    installation.supplies().forEach(point -> points.put(point.id(), point.elevation()));
    installation.drains().forEach(point -> points.put(point.id(), point.elevation()));
    Map<String, List<Run>> runs = new HashMap<>();
    for (Run run : installation.runs()) {
      runs.computeIfAbsent(run.from().at(), id -> new ArrayList<>()).add(run);
      runs.computeIfAbsent(run.to().at(), id -> new ArrayList<>()).add(run);
    }
    return new Drawing(
        installation,
        byId(installation.vessels()),
        byId(installation.floors()),
        parts,
        points,
        runs,
        unread);
  }

  private static <E extends Element> Map<String, E> byId(List<E> elements) {
    Map<String, E> map = new HashMap<>();
    elements.forEach(element -> map.putIfAbsent(element.id(), element));
    return map;
  }

  Optional<Vessel> vessel(String id) {
    return Optional.ofNullable(vessels.get(id));
  }

  Optional<Floor> floor(String id) {
    return Optional.ofNullable(floors.get(id));
  }

  Optional<Storey> storey(String id) {
    return installation.storeys().stream().filter(storey -> storey.id().equals(id)).findFirst();
  }

  /** Elevation of a vessel's inside bottom or of a floor (m); not a number for anything else. */
  double bottomOf(String id) {
    return vessel(id)
        .map(Vessel::bottom)
        .or(() -> floor(id).map(Floor::elevation))
        .orElse(Double.NaN);
  }

  /** Elevation of a vessel's rim (m), endless for a floor; not a number for anything else. */
  double rimOf(String id) {
    return vessel(id)
        .map(Vessel::rim)
        .or(() -> floor(id).map(floor -> Double.POSITIVE_INFINITY))
        .orElse(Double.NaN);
  }

  /** Elevation of a run's end (m); not a number if its place is not drawn. */
  double elevationOf(RunEnd end) {
    return switch (end) {
      case RunEnd.Opening opening -> opening.elevation();
      case RunEnd.AtJunction junction -> points.getOrDefault(junction.at(), Double.NaN);
      case RunEnd.AtSupply supply -> points.getOrDefault(supply.at(), Double.NaN);
      case RunEnd.AtDrain drain -> points.getOrDefault(drain.at(), Double.NaN);
    };
  }

  /** Runs that begin or end at this place; one that does both is there twice. */
  List<Run> runsAt(String id) {
    return runs.getOrDefault(id, List.of());
  }
}
