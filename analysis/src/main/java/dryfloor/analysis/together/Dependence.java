package dryfloor.analysis.together;

import dryfloor.model.Installation;
import dryfloor.model.element.CirculationPump;
import dryfloor.model.element.Control;
import dryfloor.model.element.Floor;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.element.Vessel;
import dryfloor.model.element.Weir;
import dryfloor.model.graph.HydraulicGroup;
import dryfloor.model.graph.WaterGraph;
import dryfloor.model.part.Part;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jgrapht.Graph;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.SimpleDirectedGraph;

/**
 * What in a drawing depends on what: an edge leads from a thing to each that looks at it. Pipes
 * look at the water at their ends, at that which lifts their float valves or covers their siphon
 * breaks, and at that which switches their pumps; weirs and rims look at the water on both sides; a
 * timer looks at all that it switches and at what calls for it.
 *
 * <p>Drains and what lies beyond the drawing are endless: nothing depends on what reaches them.
 */
final class Dependence {

  private final Installation installation;
  private final Graph<Thing, DefaultEdge> looks = new SimpleDirectedGraph<>(DefaultEdge.class);

  /** Pipes by the ids of their runs and parts; stirrers, weirs, places by their own. */
  private final Map<String, Thing> things = new HashMap<>();

  Dependence(Installation installation) {
    this.installation = installation;
    installation.vessels().forEach(vessel -> add(Thing.Kind.PLACE, vessel.id()));
    installation.floors().forEach(floor -> add(Thing.Kind.PLACE, floor.id()));
    installation.supplies().forEach(supply -> add(Thing.Kind.PLACE, supply.id()));
    installation.circulationPumps().forEach(pump -> add(Thing.Kind.STIRRER, pump.id()));
    installation.weirs().forEach(weir -> add(Thing.Kind.WEIR, weir.id()));
    Map<String, Run> runs = new HashMap<>();
    installation.runs().forEach(run -> runs.put(run.id(), run));
    for (HydraulicGroup group : WaterGraph.of(installation).hydraulicGroups()) {
      addPipes(group.runs().stream().map(runs::get).toList());
    }
    installation.vessels().forEach(this::addRim);
    installation.floors().forEach(this::addSill);
    installation.weirs().forEach(this::addWeirEnds);
    installation.circulationPumps().forEach(this::addStirrer);
    installation.controls().forEach(this::addControl);
  }

  private Thing add(Thing.Kind kind, String id) {
    Thing thing = new Thing(kind, id);
    looks.addVertex(thing);
    things.put(id, thing);
    return thing;
  }

  private void addPipes(List<Run> group) {
    String first = group.stream().map(Run::id).sorted().findFirst().orElseThrow();
    Thing pipes = add(Thing.Kind.PIPES, first);
    for (Run run : group) {
      things.put(run.id(), pipes);
      for (RunEnd end : List.of(run.from(), run.to())) {
        looksAt(pipes, end.at());
      }
      for (Part part : run.parts()) {
        things.put(part.id(), pipes);
        feltBy(part).ifPresent(vessel -> looksAt(pipes, vessel));
      }
    }
  }

  private static Optional<String> feltBy(Part part) {
    return switch (part) {
      case Part.FloatValve floatValve -> Optional.of(floatValve.vessel());
      case Part.SiphonBreak hole -> hole.coveredBy();
      case Part.Pump pump -> Optional.empty();
      case Part.Valve valve -> Optional.empty();
      case Part.CheckValve checkValve -> Optional.empty();
      case Part.Joint joint -> Optional.empty();
      case Part.Strainer strainer -> Optional.empty();
      case Part.Restrictor restrictor -> Optional.empty();
      case Part.Device device -> Optional.empty();
    };
  }

  private void addRim(Vessel vessel) {
    addEdge(vessel.id(), Optional.of(vessel.standsIn()));
  }

  private void addSill(Floor floor) {
    addEdge(floor.id(), floor.spillsTo());
  }

  private void addEdge(String place, Optional<String> spillsTo) {
    Thing rim = new Thing(Thing.Kind.RIM, place);
    looks.addVertex(rim);
    looksAt(rim, place);
    spillsTo.ifPresent(below -> looksAt(rim, below));
  }

  private void addWeirEnds(Weir weir) {
    Thing thing = new Thing(Thing.Kind.WEIR, weir.id());
    looksAt(thing, weir.from());
    looksAt(thing, weir.to());
  }

  private void addStirrer(CirculationPump pump) {
    looksAt(new Thing(Thing.Kind.STIRRER, pump.id()), pump.vessel());
  }

  private void addControl(Control control) {
    switch (control) {
      case Control.LevelSwitch levelSwitch -> switches(levelSwitch, levelSwitch.vessel());
      case Control.LeakSensor sensor -> switches(sensor, sensor.in());
      case Control.Timer timer -> addTimer(timer);
      case Control.HandSwitch handSwitch -> {}
    }
  }

  private void switches(Control control, String place) {
    switched(control).forEach(thing -> looksAt(thing, place));
  }

  private void addTimer(Control.Timer timer) {
    Thing thing = new Thing(Thing.Kind.TIMER, timer.id());
    looks.addVertex(thing);
    switched(timer).distinct().forEach(driven -> looks.addEdge(driven, thing));
    installation.controls().stream()
        .filter(other -> other.drives().stream().anyMatch(timer.drives()::contains))
        .flatMap(other -> felt(other).stream())
        .forEach(place -> looksAt(thing, place));
  }

  private static Optional<String> felt(Control control) {
    return switch (control) {
      case Control.LevelSwitch levelSwitch -> Optional.of(levelSwitch.vessel());
      case Control.LeakSensor sensor -> Optional.of(sensor.in());
      case Control.Timer timer -> Optional.empty();
      case Control.HandSwitch handSwitch -> Optional.empty();
    };
  }

  private void looksAt(Thing thing, String place) {
    Thing seen = new Thing(Thing.Kind.PLACE, place);
    if (looks.containsVertex(seen)) {
      looks.addEdge(seen, thing);
    }
  }

  /** What a control switches. */
  Stream<Thing> switched(Control control) {
    return control.drives().stream().map(this::thing);
  }

  /**
   * What has this id or contains what has it.
   *
   * @throws IllegalArgumentException if nothing that can change has this id
   */
  Thing thing(String id) {
    return find(id)
        .orElseThrow(
            () -> new IllegalArgumentException("nothing that can change is called '" + id + "'"));
  }

  /** What has this id or contains what has it, unless that never changes. */
  Optional<Thing> find(String id) {
    return Optional.ofNullable(things.get(id));
  }

  /** These things and all that look at them. */
  Set<Thing> withLookers(Set<Thing> changed) {
    Set<Thing> all = new HashSet<>(changed);
    for (Thing thing : changed) {
      looks.outgoingEdgesOf(thing).forEach(edge -> all.add(looks.getEdgeTarget(edge)));
    }
    return all;
  }
}
