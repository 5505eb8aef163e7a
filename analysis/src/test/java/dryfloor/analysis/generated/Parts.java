package dryfloor.analysis.generated;

import dryfloor.model.element.RunEnd;
import dryfloor.model.part.Part;
import dryfloor.model.part.Power;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Parts of runs as units want them. */
final class Parts {

  private Parts() {}

  /**
   * A pump whose curve falls from a head at no flow to nothing at its most.
   *
   * @param head m
   * @param most m³/s
   */
  static Part.Pump pump(
      String id, double along, Power power, double head, double most, Set<Trait> traits) {
    return new Part.Pump(
        id,
        id,
        along,
        List.of(
            new Part.Pump.CurvePoint(0, head),
            new Part.Pump.CurvePoint(0.6 * most, 0.7 * head),
            new Part.Pump.CurvePoint(most, 0)),
        1,
        Part.Pump.Kind.CENTRIFUGAL,
        power,
        5,
        !traits.contains(Trait.LOSES_PRIME),
        Optional.empty());
  }

  static Part.Pump dosingPump(String id, double along, Power power, double most) {
    return new Part.Pump(
        id,
        id,
        along,
        List.of(new Part.Pump.CurvePoint(0, 40), new Part.Pump.CurvePoint(most, 0)),
        0.8,
        Part.Pump.Kind.DISPLACEMENT,
        power,
        0,
        true,
        Optional.of(Site.PLANT_ROOM));
  }

  static Part.CheckValve checkValve(String id, double along) {
    return new Part.CheckValve(id, id, along, 0.03, 2);
  }

  static Part.Valve handValve(String id, double along, double opening, Part.Valve.Use use) {
    return new Part.Valve(id, id, along, 20, opening, new Part.Valve.Drive.Hand(use));
  }

  static Part.Valve poweredValve(String id, double along, Power power, Part.Valve.Rest rest) {
    return new Part.Valve(id, id, along, 30, 1, new Part.Valve.Drive.Powered(power, rest));
  }

  /** Joints of every kind, a hand apart. */
  static List<Part> joints(String prefix, double along, double elevation, String standsIn) {
    List<Part> joints = new ArrayList<>();
    for (Part.Joint.Kind kind : Part.Joint.Kind.values()) {
      String id = prefix + "joint-" + (joints.size() + 1);
      joints.add(
          new Part.Joint(
              id, id, along + 0.01 * joints.size(), elevation, kind, Optional.of(standsIn)));
    }
    return joints;
  }

  /** Equipment; only a skimmer has a cup. */
  static Part.Device device(
      String id, double along, Part.Device.Kind kind, double elevation, double holds) {
    return new Part.Device(
        id,
        id,
        along,
        kind,
        elevation,
        4,
        holds,
        kind == Part.Device.Kind.SKIMMER ? OptionalDouble.of(2e-5) : OptionalDouble.empty(),
        Optional.of(Site.PLANT_ROOM));
  }

  static RunEnd.Opening port(Site site, String vessel, double at) {
    return opening(site, vessel, at, RunEnd.Opening.Kind.PORT);
  }

  static RunEnd.Opening lip(Site site, String vessel, double at) {
    return opening(site, vessel, at, RunEnd.Opening.Kind.STANDPIPE);
  }

  static RunEnd.Opening freeEnd(Site site, String vessel, double at) {
    return opening(site, vessel, at, RunEnd.Opening.Kind.FREE);
  }

  private static RunEnd.Opening opening(
      Site site, String vessel, double at, RunEnd.Opening.Kind kind) {
    return new RunEnd.Opening(vessel, site.plan.bottomOf(vessel) + at, kind);
  }
}
