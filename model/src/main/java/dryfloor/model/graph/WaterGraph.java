package dryfloor.model.graph;

import dryfloor.model.Installation;
import dryfloor.model.element.Floor;
import dryfloor.model.element.Run;
import dryfloor.model.element.Vessel;
import dryfloor.model.element.Weir;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jgrapht.Graph;
import org.jgrapht.alg.cycle.CycleDetector;
import org.jgrapht.graph.AsSubgraph;
import org.jgrapht.graph.AsUnmodifiableGraph;
import org.jgrapht.graph.DirectedPseudograph;
import org.jgrapht.traverse.BreadthFirstIterator;

/**
 * An installation as a directed graph of places and ways.
 *
 * <p>A way to something that is not drawn leads beyond the drawing; a way from something that is
 * not drawn is left out. Both occur only in a drawing that has not passed its checks.
 */
public final class WaterGraph {

  private final Graph<Place, Way> ways = new DirectedPseudograph<>(Way.class);
  private final Map<String, Place> places = new HashMap<>();
  private final Installation installation;

  private WaterGraph(Installation installation) {
    this.installation = installation;
  }

  /** The graph of this installation. */
  public static WaterGraph of(Installation installation) {
    WaterGraph graph = new WaterGraph(installation);
    graph.addPlaces();
    graph.addWays();
    return graph;
  }

  private void addPlaces() {
    ways.addVertex(Place.BEYOND);
    installation.vessels().forEach(vessel -> addPlace(vessel.id(), Place.Kind.VESSEL));
    installation.floors().forEach(floor -> addPlace(floor.id(), Place.Kind.FLOOR));
    installation.junctions().forEach(junction -> addPlace(junction.id(), Place.Kind.JUNCTION));
    installation.supplies().forEach(supply -> addPlace(supply.id(), Place.Kind.SUPPLY));
    installation.drains().forEach(drain -> addPlace(drain.id(), Place.Kind.DRAIN));
  }

  private void addPlace(String id, Place.Kind kind) {
    Place place = new Place.Drawn(id, kind);
    if (places.putIfAbsent(id, place) == null) {
      ways.addVertex(place);
    }
  }

  private void addWays() {
    for (Vessel vessel : installation.vessels()) {
      addWay(vessel.id(), vessel.standsIn(), new Way.RimWay(vessel.id()));
    }
    for (Floor floor : installation.floors()) {
      addWay(floor.id(), floor.spillsTo().orElse(""), new Way.SillWay(floor.id()));
    }
    for (Weir weir : installation.weirs()) {
      addWay(weir.from(), weir.to(), new Way.WeirWay(weir.id()));
    }
    for (Run run : installation.runs()) {
      addWay(run.from().at(), run.to().at(), new Way.RunWay(run.id()));
    }
  }

  private void addWay(String from, String to, Way way) {
    Place start = places.get(from);
    if (start != null) {
      ways.addEdge(start, places.getOrDefault(to, Place.BEYOND), way);
    }
  }

  /** All places and ways, not to be changed. */
  public Graph<Place, Way> view() {
    return new AsUnmodifiableGraph<>(ways);
  }

  /** The place with this id. */
  public Optional<Place> find(String id) {
    return Optional.ofNullable(places.get(id));
  }

  /**
   * Where a spill from this vessel or floor goes, place by place, without the place itself: over
   * rims into what stands around, over sills to the next room, at last beyond the drawing. Empty
   * for a place that cannot spill. A path that runs in a circle ends before the first place that it
   * reaches again.
   *
   * @throws IllegalArgumentException if no place has this id
   */
  public List<Place> spillPath(String id) {
    Place place = require(id);
    Set<Place> path = new LinkedHashSet<>();
    path.add(place);
    Optional<Place> next = afterSpill(place);
    while (next.isPresent() && path.add(next.get())) {
      next = afterSpill(next.get());
    }
    return new ArrayList<>(path).subList(1, path.size());
  }

  /**
   * Where a spill from this vessel or floor goes first; empty for a place that cannot spill.
   *
   * @throws IllegalArgumentException if no place has this id
   */
  public Optional<Place> spillTarget(String id) {
    return afterSpill(require(id));
  }

  private Optional<Place> afterSpill(Place place) {
    return ways.outgoingEdgesOf(place).stream()
        .filter(Way::isSpill)
        .findFirst()
        .map(ways::getEdgeTarget);
  }

  /**
   * Ids of the drains that water from this place can reach by runs, weirs and spills, pumped or
   * not.
   *
   * @throws IllegalArgumentException if no place has this id
   */
  public Set<String> drainsReachable(String id) {
    Set<String> drains = new TreeSet<>();
    new BreadthFirstIterator<>(ways, require(id))
        .forEachRemaining(
            place -> {
              if (place instanceof Place.Drawn drawn && drawn.kind() == Place.Kind.DRAIN) {
                drains.add(drawn.id());
              }
            });
    return drains;
  }

  /** The runs, each with those that it must be solved together with. */
  public List<HydraulicGroup> hydraulicGroups() {
    return HydraulicGroups.of(installation);
  }

  /** Whether every spill comes to an end. */
  public boolean isSpillCycleFree() {
    return placesInSpillCycles().isEmpty();
  }

  /** Ids of the vessels and floors from which a spill would come back to where it began. */
  public Set<String> placesInSpillCycles() {
    Set<Way> spills = ways.edgeSet().stream().filter(Way::isSpill).collect(Collectors.toSet());
    Graph<Place, Way> spilling = new AsSubgraph<>(ways, null, spills);
    return new CycleDetector<>(spilling)
        .findCycles().stream()
            .filter(Place.Drawn.class::isInstance)
            .map(place -> ((Place.Drawn) place).id())
            .collect(Collectors.toCollection(TreeSet::new));
  }

  private Place require(String id) {
    return find(id)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "'" + id + "' is no vessel, floor, junction, supply or drain"));
  }
}
