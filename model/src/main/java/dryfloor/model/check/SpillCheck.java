package dryfloor.model.check;

import static dryfloor.model.check.Findings.exceeds;
import static dryfloor.model.check.Findings.length;

import dryfloor.model.element.Floor;
import dryfloor.model.element.Vessel;
import dryfloor.model.graph.Place;
import dryfloor.model.graph.WaterGraph;
import java.util.Optional;
import java.util.Set;

/** Checks that every spill goes down and comes to an end. */
final class SpillCheck {

  private static final int LONGEST_CIRCLE = 6;

  /** (m²) */
  private static final double SMALLEST_FLOOR = 0.01;

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
      if (floor.area() < SMALLEST_FLOOR) {
        findings.error(
            floor.id(),
            "area",
            "the floor is smaller than a hand, so no depth of water on it means anything",
            "the whole area of the room, such as \"12 m2\"; at least 0.01 m2");
      }
      floor.spillsTo().ifPresent(to -> checkGoesDown(floor, to));
    }
  }

  /** The first few places of the circle, in words. */
  private String circle(String id) {
    StringBuilder words = new StringBuilder(id);
    String current = id;
    for (int step = 0; step < LONGEST_CIRCLE; step++) {
      Optional<Place> next = graph.spillTarget(current);
      if (!(next.isPresent() && next.get() instanceof Place.Drawn drawn)) {
        return words.toString();
      }
      words.append(", then ").append(drawn.id());
      current = drawn.id();
      if (current.equals(id)) {
        return words.toString();
      }
    }
    return words.append(", and so on").toString();
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
