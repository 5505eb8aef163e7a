package dryfloor.analysis.installation;

import dryfloor.model.element.Fitting;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.element.RunEnd.Opening.Kind;
import dryfloor.model.part.Part;
import dryfloor.model.part.Part.Pump.CurvePoint;
import dryfloor.model.part.Power;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** A run being drawn: 32 mm smooth pipe that feeds, unless said otherwise. */
public final class RunPlan {

  private final String id;
  private final Plan plan;
  private RunEnd from = new RunEnd.AtJunction("");
  private RunEnd to = new RunEnd.AtJunction("");
  private Run.Duty duty = Run.Duty.FEED;
  private double bore = 0.032;
  private double length = 1;
  private double roughness = 1.5e-6;
  private double extraLoss;
  private boolean vented;
  private Optional<String> standsIn = Optional.empty();
  private final List<Run.FittingCount> fittings = new ArrayList<>();
  private final List<Run.Waypoint> waypoints = new ArrayList<>();
  private final List<Part> parts = new ArrayList<>();

  RunPlan(String id, Plan plan) {
    this.id = id;
    this.plan = plan;
  }

  public RunPlan from(String place, double at) {
    from = new RunEnd.Opening(place, plan.bottomOf(place) + at, Kind.PORT);
    return this;
  }

  /** From the upright open end of a standpipe. */
  public RunPlan fromLip(String place, double at) {
    from = new RunEnd.Opening(place, plan.bottomOf(place) + at, Kind.STANDPIPE);
    duty = Run.Duty.DRAIN;
    return this;
  }

  public RunPlan fromSupply(String supply) {
    from = new RunEnd.AtSupply(supply);
    return this;
  }

  public RunPlan fromJunction(String junction) {
    from = new RunEnd.AtJunction(junction);
    return this;
  }

  public RunPlan to(String place, double at) {
    to = new RunEnd.Opening(place, plan.bottomOf(place) + at, Kind.FREE);
    return this;
  }

  public RunPlan from(RunEnd end) {
    from = end;
    return this;
  }

  public RunPlan to(RunEnd end) {
    to = end;
    return this;
  }

  public RunPlan toJunction(String junction) {
    to = new RunEnd.AtJunction(junction);
    return this;
  }

  public RunPlan toDrain(String drain) {
    to = new RunEnd.AtDrain(drain);
    return this;
  }

  public RunPlan bore(double diameter) {
    bore = diameter;
    return this;
  }

  public RunPlan length(double metres) {
    length = metres;
    return this;
  }

  public RunPlan roughness(double height) {
    roughness = height;
    return this;
  }

  public RunPlan extraLoss(double velocityHeads) {
    extraLoss = velocityHeads;
    return this;
  }

  public RunPlan fitting(Fitting kind, int count) {
    fittings.add(new Run.FittingCount(kind, count));
    return this;
  }

  public RunPlan duty(Run.Duty chosen) {
    duty = chosen;
    return this;
  }

  public RunPlan vented() {
    vented = true;
    return this;
  }

  public RunPlan standsIn(String place) {
    standsIn = Optional.of(place);
    return this;
  }

  /** A crest or low point at an elevation, so far along the run (m). */
  public RunPlan by(double elevation, double along) {
    waypoints.add(new Run.Waypoint(elevation, along));
    return this;
  }

  /** A centrifugal pump; its curve is given as flow (L/s) and head (m) in turn. */
  public RunPlan pump(String pump, double along, String circuit, double... flowAndHead) {
    return pump(pump, along, circuit, true, Part.Pump.Kind.CENTRIFUGAL, flowAndHead);
  }

  /** A centrifugal pump that does not take up water again after it has sucked air. */
  public RunPlan pumpThatLosesPrime(
      String pump, double along, String circuit, double... flowAndHead) {
    return pump(pump, along, circuit, false, Part.Pump.Kind.CENTRIFUGAL, flowAndHead);
  }

  public RunPlan dosingPump(String pump, double along, String circuit, double... flowAndHead) {
    return pump(pump, along, circuit, true, Part.Pump.Kind.DISPLACEMENT, flowAndHead);
  }

  private RunPlan pump(
      String pump,
      double along,
      String circuit,
      boolean primesAgain,
      Part.Pump.Kind kind,
      double... flowAndHead) {
    List<CurvePoint> curve = new ArrayList<>();
    for (int i = 0; i < flowAndHead.length; i += 2) {
      curve.add(new CurvePoint(flowAndHead[i] / 1000, flowAndHead[i + 1]));
    }
    Power power = Plan.poweredBy(circuit);
    parts.add(
        new Part.Pump(pump, pump, along, curve, 1, kind, power, 5, primesAgain, Optional.empty()));
    return this;
  }

  public RunPlan checkValve(String valve, double along) {
    parts.add(new Part.CheckValve(valve, valve, along, 0.05, 2));
    return this;
  }

  /** One hole, measured from the bottom of the vessel whose water covers it. */
  public RunPlan siphonBreak(
      String hole, double along, String coveredBy, double at, double diameter) {
    double elevation = plan.bottomOf(coveredBy) + at;
    parts.add(
        new Part.SiphonBreak(hole, hole, along, elevation, diameter, 1, Optional.of(coveredBy)));
    return this;
  }

  /** A hand valve so wide that it costs no head when open. */
  public RunPlan valve(String valve, double along, double opening) {
    Part.Valve.Drive drive = new Part.Valve.Drive.Hand(Part.Valve.Use.ISOLATE);
    parts.add(new Part.Valve(valve, valve, along, 1e6, opening, drive));
    return this;
  }

  public RunPlan floatValve(
      String valve, double along, double kv, String vessel, double closesAt, double band) {
    double elevation = plan.bottomOf(vessel) + closesAt;
    parts.add(new Part.FloatValve(valve, valve, along, kv, vessel, elevation, band));
    return this;
  }

  /** Equipment that keeps some water (m³) only while its pump runs. */
  public RunPlan skimmer(String device, double along, double elevation, double holds) {
    parts.add(
        new Part.Device(
            device,
            device,
            along,
            Part.Device.Kind.SKIMMER,
            elevation,
            0,
            holds,
            OptionalDouble.empty(),
            Optional.empty()));
    return this;
  }

  public RunPlan joint(String joint, double along, double elevation, String standsIn) {
    parts.add(
        new Part.Joint(
            joint, joint, along, elevation, Part.Joint.Kind.UNION, Optional.of(standsIn)));
    return this;
  }

  /** Something that always costs so many velocity heads. */
  public RunPlan strainer(String strainer, double along, double velocityHeads) {
    parts.add(new Part.Strainer(strainer, strainer, along, velocityHeads));
    return this;
  }

  public RunPlan parts(Part... more) {
    parts.addAll(Arrays.asList(more));
    return this;
  }

  Run build() {
    return new Run(
        id, id, from, to, duty, bore, length, roughness, fittings, extraLoss, waypoints, parts,
        vented, standsIn);
  }
}
