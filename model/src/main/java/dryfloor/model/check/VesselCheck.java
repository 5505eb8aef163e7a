package dryfloor.model.check;

import static dryfloor.model.check.Findings.exceeds;
import static dryfloor.model.check.Findings.length;

import dryfloor.model.element.Storey;
import dryfloor.model.element.Vessel;
import dryfloor.model.shape.Shape;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Checks levels, contents and rims of vessels and whether they fit into what they stand in. */
final class VesselCheck {

  /** (m³) */
  private static final double LEAST_CAPACITY = 1e-5;

  /** (m) Higher than any vessel that stands in a building. */
  private static final double GREATEST_HEIGHT = 30;

  private final Drawing drawing;
  private final Findings findings;

  /** Storeys of floors and of what stands on them at last, as far as they were asked for. */
  private final Map<String, Optional<Storey>> storeys = new HashMap<>();

  VesselCheck(Drawing drawing, Findings findings) {
    this.drawing = drawing;
    this.findings = findings;
  }

  void run() {
    if (drawing.installation().vessels().isEmpty() && drawing.unread().isEmpty()) {
      findings.error("", "vessels", "no vessel is drawn", "draw at least one vessel with water");
    }
    Map<String, List<Vessel>> standing = new HashMap<>();
    for (Vessel vessel : drawing.installation().vessels()) {
      checkSize(vessel);
      checkLevel(vessel);
      checkRim(vessel);
      checkContents(vessel);
      checkStanding(vessel);
      checkCeiling(vessel);
      standing.computeIfAbsent(vessel.standsIn(), id -> new ArrayList<>()).add(vessel);
    }
    for (Vessel vessel : drawing.installation().vessels()) {
      checkRoom(vessel, standing.getOrDefault(vessel.id(), List.of()));
    }
  }

  private void checkSize(Vessel vessel) {
    if (vessel.shape().capacity() < LEAST_CAPACITY) {
      findings.error(
          vessel.id(),
          "shape",
          "the vessel holds less than 10 mL, too little for a level to mean anything",
          "inside sizes for 10 mL or more; leave out what holds less");
    }
    if (exceeds(vessel.shape().height(), GREATEST_HEIGHT)) {
      findings.error(
          vessel.id(),
          "shape",
          "the vessel is " + length(vessel.shape().height()) + " high",
          "an inside height of at most " + length(GREATEST_HEIGHT));
    }
  }

  private void checkLevel(Vessel vessel) {
    if (exceeds(vessel.level(), vessel.rim())) {
      findings.error(
          vessel.id(),
          "level",
          "the water stands " + length(vessel.level() - vessel.rim()) + " above the rim",
          "give a level of at most "
              + length(vessel.shape().height())
              + " above the inside bottom");
    }
    if (exceeds(vessel.bottom(), vessel.level())) {
      findings.error(
          vessel.id(),
          "level",
          "the water stands " + length(vessel.bottom() - vessel.level()) + " below the bottom",
          "a level of 0 mm or more; a dry vessel has 0 mm");
    }
    if (vessel.isBasin() && exceeds(vessel.level(), vessel.bottom())) {
      findings.warning(
          vessel.id(),
          "level",
          "a basin with water in normal operation catches less",
          "leave the level out, or give the vessel another role");
    }
  }

  private void checkRim(Vessel vessel) {
    if (exceeds(vessel.spillEdge(), vessel.shape().rimLength())) {
      findings.error(
          vessel.id(),
          "spillEdge",
          "the spill edge is longer than the rim of " + length(vessel.shape().rimLength()),
          "at most the length of the rim; leave it out for the whole rim");
    }
  }

  private void checkContents(Vessel vessel) {
    Shape shape = vessel.shape();
    for (int i = 0; i < vessel.contents().size(); i++) {
      Vessel.Displacement solid = vessel.contents().get(i);
      String field = "contents[" + i + "]";
      if (solid.from() >= solid.to()) {
        findings.error(
            vessel.id(),
            field,
            "contents from " + length(solid.from()) + " to " + length(solid.to()),
            "'from' is the lower depth, 'to' the upper");
      } else if (exceeds(solid.to(), shape.height())) {
        findings.error(
            vessel.id(),
            field + ".to",
            "contents reach " + length(solid.to() - shape.height()) + " above the rim",
            "count only what lies below the rim, at " + length(shape.height()));
      } else if (fillsTheVesselSomewhere(vessel, solid)) {
        findings.error(
            vessel.id(),
            field + ".volume",
            "the contents are larger than the vessel between these depths",
            "the volume of the solids alone, less than the "
                + Math.round(
                    1000 * (shape.volumeBelow(solid.to()) - shape.volumeBelow(solid.from())))
                + " L that the vessel holds there");
      }
    }
  }

  /**
   * All contents together, looked at where this one lies: just above its foot, at its middle, top.
   */
  private static boolean fillsTheVesselSomewhere(Vessel vessel, Vessel.Displacement solid) {
    double height = solid.to() - solid.from();
    for (double part : new double[] {0, 0.5, 1 - 1e-9}) {
      double depth = solid.from() + part * height;
      double taken = vessel.contents().stream().mapToDouble(c -> c.areaAt(depth)).sum();
      if (taken >= vessel.shape().areaAt(depth)) {
        return true;
      }
    }
    return false;
  }

  private void checkStanding(Vessel vessel) {
    if (exceeds(drawing.bottomOf(vessel.standsIn()), vessel.bottom())) {
      findings.error(
          vessel.id(),
          "raised",
          "its bottom lies "
              + length(drawing.bottomOf(vessel.standsIn()) - vessel.bottom())
              + " below the bottom of '"
              + vessel.standsIn()
              + "', in which it stands",
          "raised is 0 mm or more above what it stands in");
    }
    drawing
        .vessel(vessel.standsIn())
        .filter(outer -> !outer.isBasin() && exceeds(vessel.bottom(), outer.rim()))
        .ifPresent(
            outer ->
                findings.warning(
                    vessel.id(),
                    "standsIn",
                    "its bottom hangs "
                        + length(vessel.bottom() - outer.rim())
                        + " above the rim of '"
                        + outer.id()
                        + "', which is no basin to stand in",
                    "what it stands in; all that it spills is taken to fall into '"
                        + outer.id()
                        + "'"));
  }

  private void checkCeiling(Vessel vessel) {
    Optional<Storey> storey = storeyOf(vessel);
    double ceiling = storey.map(s -> s.elevation() + s.height()).orElse(Double.NaN);
    if (exceeds(vessel.bottom(), ceiling)) {
      findings.error(
          vessel.id(),
          "raised",
          "its bottom lies "
              + length(vessel.bottom() - ceiling)
              + " above the ceiling of '"
              + storey.orElseThrow().id()
              + "', in which it stands",
          "a bottom below the ceiling, or the floor of a higher storey to stand on");
    }
  }

  /** The storey of the floor on which a vessel stands at last; none where it stands in a circle. */
  private Optional<Storey> storeyOf(Vessel vessel) {
    List<String> way = new ArrayList<>();
    String place = vessel.standsIn();
    while (!storeys.containsKey(place)) {
      storeys.put(place, drawing.floor(place).flatMap(floor -> drawing.storey(floor.storey())));
      way.add(place);
      place = drawing.vessel(place).map(Vessel::standsIn).orElse(place);
    }
    Optional<Storey> storey = storeys.getOrDefault(place, Optional.empty());
    way.forEach(between -> storeys.put(between, storey));
    return storey;
  }

  private void checkRoom(Vessel outer, List<Vessel> inside) {
    double taken = inside.stream().mapToDouble(VesselCheck::footprint).sum();
    double room = outer.shape().areaAt(outer.shape().height());
    if (taken > room * (1 + 1e-9)) {
      for (Vessel inner : inside) {
        findings.error(
            inner.id(),
            "standsIn",
            String.format(
                Locale.ROOT,
                "'%s' has a plan area of %.3f m2, too little for the %.3f m2 that stand in it",
                outer.id(),
                room,
                taken),
            "a larger '" + outer.id() + "', or something else to stand in");
      }
    }
  }

  private static double footprint(Vessel vessel) {
    return Math.max(vessel.shape().areaAt(0), vessel.shape().areaAt(vessel.shape().height()));
  }
}
