package dryfloor.analysis.installation;

import dryfloor.model.Installation;
import dryfloor.model.element.CirculationPump;
import dryfloor.model.element.Control;
import dryfloor.model.element.Drain;
import dryfloor.model.element.Floor;
import dryfloor.model.element.Junction;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.element.Storey;
import dryfloor.model.element.Supply;
import dryfloor.model.element.Vessel;
import dryfloor.model.element.Weir;
import dryfloor.model.part.Part;
import java.util.OptionalDouble;

/**
 * A whole building drawn from another datum.
 *
 * @param by added to every elevation (m)
 */
public record Lifted(double by) {

  public Installation lift(Installation drawn) {
    return new Installation(
        drawn.name(),
        drawn.conditions(),
        drawn.storeys().stream().map(this::lift).toList(),
        drawn.floors().stream().map(this::lift).toList(),
        drawn.vessels().stream().map(this::lift).toList(),
        drawn.weirs().stream().map(this::lift).toList(),
        drawn.junctions().stream().map(this::lift).toList(),
        drawn.supplies().stream().map(this::lift).toList(),
        drawn.drains().stream().map(this::lift).toList(),
        drawn.runs().stream().map(this::lift).toList(),
        drawn.circulationPumps().stream().map(this::lift).toList(),
        drawn.circuits(),
        drawn.controls().stream().map(this::lift).toList(),
        drawn.failureSettings());
  }

  private Storey lift(Storey s) {
    return new Storey(s.id(), s.name(), s.elevation() + by, s.height());
  }

  private Floor lift(Floor f) {
    return new Floor(
        f.id(),
        f.name(),
        f.storey(),
        f.elevation() + by,
        f.area(),
        f.sill(),
        f.sillLength(),
        f.spillsTo());
  }

  private Vessel lift(Vessel v) {
    return new Vessel(
        v.id(),
        v.name(),
        v.role(),
        v.shape(),
        v.bottom() + by,
        v.level() + by,
        v.contents(),
        v.salinity(),
        v.spillEdge(),
        v.standsIn(),
        v.emptyMass());
  }

  private Weir lift(Weir w) {
    return new Weir(w.id(), w.name(), w.kind(), w.from(), w.to(), w.crest() + by, w.length());
  }

  private Junction lift(Junction j) {
    return new Junction(j.id(), j.name(), j.elevation() + by);
  }

  private Supply lift(Supply s) {
    return new Supply(
        s.id(),
        s.name(),
        s.kind(),
        s.elevation() + by,
        s.pressure(),
        s.maximumFlow(),
        s.salinity(),
        s.protection());
  }

  private Drain lift(Drain d) {
    OptionalDouble surcharge =
        d.surchargeLevel().isPresent()
            ? OptionalDouble.of(d.surchargeLevel().getAsDouble() + by)
            : OptionalDouble.empty();
    return new Drain(d.id(), d.name(), d.elevation() + by, surcharge);
  }

  private Run lift(Run r) {
    return new Run(
        r.id(),
        r.name(),
        lift(r.from()),
        lift(r.to()),
        r.duty(),
        r.bore(),
        r.length(),
        r.roughness(),
        r.fittings(),
        r.extraLoss(),
        r.waypoints().stream().map(w -> new Run.Waypoint(w.elevation() + by, w.along())).toList(),
        r.parts().stream().map(this::lift).toList(),
        r.vented(),
        r.standsIn());
  }

  private RunEnd lift(RunEnd end) {
    return switch (end) {
      case RunEnd.Opening o -> new RunEnd.Opening(o.at(), o.elevation() + by, o.kind());
      case RunEnd.AtJunction junction -> junction;
      case RunEnd.AtSupply supply -> supply;
      case RunEnd.AtDrain drain -> drain;
    };
  }

  private Part lift(Part part) {
    return switch (part) {
      case Part.Pump pump -> pump;
      case Part.Valve valve -> valve;
      case Part.FloatValve v ->
          new Part.FloatValve(
              v.id(), v.name(), v.along(), v.kv(), v.vessel(), v.closesAt() + by, v.band());
      case Part.CheckValve valve -> valve;
      case Part.SiphonBreak h ->
          new Part.SiphonBreak(
              h.id(),
              h.name(),
              h.along(),
              h.elevation() + by,
              h.diameter(),
              h.count(),
              h.coveredBy());
      case Part.Joint j ->
          new Part.Joint(j.id(), j.name(), j.along(), j.elevation() + by, j.kind(), j.standsIn());
      case Part.Strainer strainer -> strainer;
      case Part.Restrictor restrictor -> restrictor;
      case Part.Device d ->
          new Part.Device(
              d.id(),
              d.name(),
              d.along(),
              d.kind(),
              d.elevation() + by,
              d.loss(),
              d.holds(),
              d.cupOverflow(),
              d.standsIn());
    };
  }

  private CirculationPump lift(CirculationPump p) {
    return new CirculationPump(p.id(), p.name(), p.vessel(), p.inlet() + by, p.flow(), p.power());
  }

  private Control lift(Control control) {
    return switch (control) {
      case Control.LevelSwitch s ->
          new Control.LevelSwitch(
              s.id(), s.name(), s.vessel(), s.lower() + by, s.upper() + by, s.action(), s.drives());
      case Control.LeakSensor sensor -> sensor;
      case Control.Timer timer -> timer;
      case Control.HandSwitch handSwitch -> handSwitch;
    };
  }
}
