package dryfloor.analysis.installation;

import dryfloor.model.element.Vessel;
import dryfloor.model.shape.Shape;
import java.util.List;
import java.util.OptionalDouble;

/** A vessel being drawn: sea water, spilling over its whole rim, unless said otherwise. */
public final class VesselPlan {

  private final String id;
  private final Shape shape;
  private String standsIn = "";
  private double raised;
  private double level;
  private double salinity = 35;
  private Vessel.Role role = Vessel.Role.SUMP;
  private double spillEdge;
  private List<Vessel.Displacement> contents = List.of();
  private OptionalDouble emptyMass = OptionalDouble.empty();

  VesselPlan(String id, Shape shape) {
    this.id = id;
    this.shape = shape;
    this.spillEdge = shape.rimLength();
  }

  /** What it stands in, and where its spills land. */
  public VesselPlan in(String place) {
    standsIn = place;
    return this;
  }

  /** Height of its bottom above what it stands in (m). */
  public VesselPlan raised(double height) {
    raised = height;
    return this;
  }

  /** Depth of its water in normal operation (m). */
  public VesselPlan level(double depth) {
    level = depth;
    return this;
  }

  public VesselPlan fresh() {
    salinity = 0;
    return this;
  }

  public VesselPlan role(Vessel.Role chosen) {
    role = chosen;
    return this;
  }

  public VesselPlan spillEdge(double length) {
    spillEdge = length;
    return this;
  }

  /** Rock, sand or media between two depths (m), and how much of it there is (m³). */
  public VesselPlan contents(double from, double to, double volume) {
    contents = List.of(new Vessel.Displacement(from, to, volume));
    return this;
  }

  /** Mass without water (kg). */
  public VesselPlan weighs(double mass) {
    emptyMass = OptionalDouble.of(mass);
    return this;
  }

  String standsIn() {
    return standsIn;
  }

  Vessel build(double ground) {
    double bottom = ground + raised;
    return new Vessel(
        id,
        id,
        role,
        shape,
        bottom,
        bottom + level,
        contents,
        salinity,
        spillEdge,
        standsIn,
        emptyMass);
  }
}
