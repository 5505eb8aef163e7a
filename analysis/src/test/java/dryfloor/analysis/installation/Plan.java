package dryfloor.analysis.installation;

import dryfloor.analysis.outcome.Ledger;
import dryfloor.model.Conditions;
import dryfloor.model.FailureSettings;
import dryfloor.model.Installation;
import dryfloor.model.element.Circuit;
import dryfloor.model.element.CirculationPump;
import dryfloor.model.element.Control;
import dryfloor.model.element.Drain;
import dryfloor.model.element.Floor;
import dryfloor.model.element.Junction;
import dryfloor.model.element.Run;
import dryfloor.model.element.Storey;
import dryfloor.model.element.Supply;
import dryfloor.model.element.Vessel;
import dryfloor.model.element.Weir;
import dryfloor.model.part.Power;
import dryfloor.model.shape.Shape;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;

/**
 * Draws an installation in the order in which one would build it, from the ground up. Heights that
 * belong to a vessel are measured from its inside bottom, all others are elevations (m).
 */
public final class Plan {

  /** Where a floor spills that is the last one drawn. */
  public static final String BEYOND = Ledger.BEYOND;

  private final String name;
  private double celsius = 25;
  private double away = 72 * 3600;
  private FailureSettings settings = FailureSettings.USUAL;
  private final Map<String, Double> bottoms = new LinkedHashMap<>();
  private final List<Storey> storeys = new ArrayList<>();
  private final List<Floor> floors = new ArrayList<>();
  private final List<Vessel> vessels = new ArrayList<>();
  private final List<Weir> weirs = new ArrayList<>();
  private final List<Junction> junctions = new ArrayList<>();
  private final List<Supply> supplies = new ArrayList<>();
  private final List<Drain> drains = new ArrayList<>();
  private final List<Run> runs = new ArrayList<>();
  private final List<CirculationPump> circulationPumps = new ArrayList<>();
  private final List<Circuit> circuits = new ArrayList<>();
  private final List<Control> controls = new ArrayList<>();

  private Plan(String name) {
    this.name = name;
  }

  public static Plan of(String name) {
    return new Plan(name);
  }

  public static Shape box(double length, double width, double height) {
    return new Shape.Box(length, width, height);
  }

  public Plan celsius(double temperature) {
    celsius = temperature;
    return this;
  }

  public Plan away(double seconds) {
    away = seconds;
    return this;
  }

  public Plan settings(FailureSettings chosen) {
    settings = chosen;
    return this;
  }

  public Plan storey(String id, double elevation) {
    storeys.add(new Storey(id, id, elevation, 3));
    return this;
  }

  /** A floor on the storey named last, with a 50 mm sill and beyond it the end of the drawing. */
  public Plan floor(String id, double area) {
    return floor(id, area, 0.05, Optional.empty());
  }

  public Plan floor(String id, double area, double sill, String spillsTo) {
    return floor(id, area, sill, Optional.of(spillsTo).filter(to -> !to.equals(BEYOND)));
  }

  private Plan floor(String id, double area, double sill, Optional<String> spillsTo) {
    Storey storey = storeys.getLast();
    floors.add(new Floor(id, id, storey.id(), storey.elevation(), area, sill, 0.9, spillsTo));
    bottoms.put(id, storey.elevation());
    return this;
  }

  public Plan vessel(String id, Shape shape, Consumer<VesselPlan> details) {
    VesselPlan plan = new VesselPlan(id, shape);
    details.accept(plan);
    Vessel vessel = plan.build(bottomOf(plan.standsIn()));
    vessels.add(vessel);
    bottoms.put(id, vessel.bottom());
    return this;
  }

  /** A dry vessel that is there to catch. */
  public Plan basin(String id, Shape shape, String standsIn) {
    return vessel(id, shape, v -> v.in(standsIn).role(Vessel.Role.BASIN).level(0));
  }

  public Plan weir(String id, String from, String to, double crest, double length) {
    weirs.add(new Weir(id, id, Weir.Kind.BAFFLE, from, to, bottomOf(from) + crest, length));
    return this;
  }

  public Plan weir(Weir weir) {
    weirs.add(weir);
    return this;
  }

  public Plan junction(String id, double elevation) {
    junctions.add(new Junction(id, id, elevation));
    return this;
  }

  public Plan mains(String id, double elevation, double pressure) {
    return supply(id, elevation, OptionalDouble.of(pressure), OptionalDouble.empty());
  }

  /** A source that delivers a flow whatever stands against it. */
  public Plan source(String id, double elevation, double flow) {
    return supply(id, elevation, OptionalDouble.empty(), OptionalDouble.of(flow));
  }

  private Plan supply(
      String id, double elevation, OptionalDouble pressure, OptionalDouble maximumFlow) {
    supplies.add(
        new Supply(
            id,
            id,
            Supply.Kind.MAINS,
            elevation,
            pressure,
            maximumFlow,
            0,
            Supply.Protection.AIR_GAP));
    return this;
  }

  public Plan supply(Supply supply) {
    supplies.add(supply);
    return this;
  }

  public Plan drain(Drain drain) {
    drains.add(drain);
    return this;
  }

  public Plan drain(String id, double elevation) {
    drains.add(new Drain(id, id, elevation, OptionalDouble.empty()));
    return this;
  }

  public Plan run(String id, Consumer<RunPlan> details) {
    RunPlan plan = new RunPlan(id, this);
    details.accept(plan);
    runs.add(plan.build());
    return this;
  }

  public Plan circuit(String id) {
    circuits.add(new Circuit(id, id, 0));
    return this;
  }

  public Plan circuit(String id, double backup) {
    circuits.add(new Circuit(id, id, backup));
    return this;
  }

  public Plan circulationPump(CirculationPump pump) {
    circulationPumps.add(pump);
    return this;
  }

  public Plan circulationPump(String id, String vessel, double inlet, double flow, String circuit) {
    circulationPumps.add(
        new CirculationPump(id, id, vessel, bottomOf(vessel) + inlet, flow, poweredBy(circuit)));
    return this;
  }

  public Plan levelSwitch(
      String id,
      String vessel,
      double lower,
      double upper,
      Control.LevelSwitch.Action action,
      String... drives) {
    double bottom = bottomOf(vessel);
    controls.add(
        new Control.LevelSwitch(
            id, id, vessel, bottom + lower, bottom + upper, action, List.of(drives)));
    return this;
  }

  /** A switch that moves nothing and only tells when the water has fallen to a mark. */
  public Plan mark(String id, String vessel, double at) {
    return levelSwitch(id, vessel, at, at + 10, Control.LevelSwitch.Action.STOPS_WHEN_LOW);
  }

  public Plan control(Control control) {
    controls.add(control);
    return this;
  }

  static Power poweredBy(String circuit) {
    return new Power(circuit, Power.OnReturn.RESTARTS, 0);
  }

  /** Elevation of the inside bottom of a vessel, or of a floor (m). */
  public double bottomOf(String place) {
    Double bottom = bottoms.get(place);
    if (bottom == null) {
      throw new IllegalArgumentException("'" + place + "' is not drawn yet; draw it first");
    }
    return bottom;
  }

  public Installation draw() {
    return new Installation(
        name,
        new Conditions(celsius, away),
        storeys,
        floors,
        vessels,
        weirs,
        junctions,
        supplies,
        drains,
        runs,
        circulationPumps,
        circuits,
        controls,
        settings);
  }
}
