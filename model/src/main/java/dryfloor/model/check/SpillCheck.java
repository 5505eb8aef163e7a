package dryfloor.model.check;

import static dryfloor.model.check.Findings.exceeds;
import static dryfloor.model.check.Findings.length;

import dryfloor.model.element.Floor;
import dryfloor.model.element.Vessel;
import dryfloor.model.graph.Place;
import dryfloor.model.graph.WaterGraph;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Checks that every spill goes down and comes to an end. */
final class SpillCheck {

  private final Drawing drawing;
  private final Findings findings;
  private final WaterGraph graph;

  SpillCheck(Drawing drawing, Findings findings) {
    this.drawing = drawing;
    this.findings = findings;
    this.graph = WaterGraph.of(drawing.installation());
  }

  void run() {
    Set<String> circular = graph.placesInSpillCycles();
    for (Vessel vessel : drawing.installation().vessels()) {
      if (circular.contains(vessel.id())) {
        findings.error(
            vessel.id(),
            "standsIn",
            "the vessel stands in itself: " + circle(vessel.id()),
            "every vessel stands, at last, on a floor");
      }
    }
    for (Floor floor : drawing.installation().floors()) {
      if (circular.contains(floor.id())) {
        findings.error(
            floor.id(),
            "spillsTo",
            "what spills from here comes back: " + circle(floor.id()),
            "leave spillsTo out where the water leaves the drawing");
      }
      floor.spillsTo().ifPresent(to -> checkGoesDown(floor, to));
    }
  }

  private String circle(String id) {
    List<Place> path = graph.spillPath(id);
    String places =
        path.stream()
            .filter(Place.Drawn.class::isInstance)
            .map(place -> ((Place.Drawn) place).id())
            .collect(Collectors.joining(", then "));
    return id + (places.isEmpty() ? "" : ", then " + places) + ", then " + id;
  }

  private void checkGoesDown(Floor floor, String to) {
    double target = drawing.vessel(to).map(Vessel::rim).orElseGet(() -> drawing.bottomOf(to));
    if (exceeds(target, floor.sillElevation())) {
      findings.error(
          floor.id(),
          "spillsTo",
          "'" + to + "' lies " + length(target - floor.sillElevation()) + " above this sill",
          "water spills downwards; name a lower place or raise the sill");
    }
  }
}
