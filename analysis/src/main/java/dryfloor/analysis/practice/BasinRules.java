package dryfloor.analysis.practice;

import dryfloor.analysis.hydraulics.Orifice;
import dryfloor.analysis.hydraulics.Physical;
import dryfloor.analysis.outcome.Ledger;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.model.Installation;
import dryfloor.model.element.Control;
import dryfloor.model.element.Control.LevelSwitch;
import dryfloor.model.element.Floor;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.element.Vessel;
import dryfloor.model.part.Part;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Rules about what is there to catch, and about what empties it. */
final class BasinRules {

  private static final double LEAST_PAN_DRAIN = 0.019;
  private static final double OF_THE_LARGEST = 1.1;
  private static final double OF_ALL = 0.25;
  private static final double USUAL_LOAD = 2000;
  private static final double DENSITY = 1000;

  private final Installation drawing;
  private final Optional<Ledger> flows;

  /**
   * Rules for a drawing.
   *
   * @param undisturbed what goes on there when nothing fails, if that is known
   */
  BasinRules(Installation drawing, Optional<Outcome> undisturbed) {
    this.drawing = drawing;
    this.flows = undisturbed.map(Outcome::ledger);
  }

  Stream<Warning> all() {
    Stream<Warning> basins =
        drawing.vessels().stream()
            .filter(Vessel::isBasin)
            .flatMap(
                basin ->
                    Stream.of(narrowDrains(basin), inflow(basin), volume(basin), load(basin))
                        .flatMap(warnings -> warnings));
    return Stream.concat(basins, pitPumps());
  }

  private Stream<Run> drainsOf(Vessel basin) {
    return drawing.runs().stream()
        .filter(run -> run.from().at().equals(basin.id()))
        .filter(run -> run.to() instanceof RunEnd.AtDrain || run.duty() != Run.Duty.FEED);
  }

  private Stream<Warning> narrowDrains(Vessel basin) {
    return drainsOf(basin)
        .filter(run -> run.bore() < LEAST_PAN_DRAIN)
        .map(run -> new Warning.PanDrainNarrow(basin.id(), run.id(), run.bore(), LEAST_PAN_DRAIN));
  }

  private Stream<Warning> inflow(Vessel basin) {
    List<Run> drains = drainsOf(basin).toList();
    if (drains.isEmpty()) {
      return Stream.empty();
    }
    double takes = drains.stream().mapToDouble(run -> capacity(basin, run)).sum();
    return drawing.runs().stream()
        .filter(run -> landsIn(run, basin.id()) && !drains.contains(run))
        .filter(run -> carries(run) > takes)
        .map(run -> new Warning.PanDrainTakesLess(basin.id(), takes, run.id(), carries(run)));
  }

  private static double capacity(Vessel basin, Run drain) {
    double opening = drain.from() instanceof RunEnd.Opening at ? at.elevation() : basin.bottom();
    double head = Math.max(basin.rim() - opening, 0);
    return Orifice.flow(Orifice.SHARP, drain.boreArea(), head);
  }

  private static boolean landsIn(Run run, String basin) {
    return run.standsIn().filter(basin::equals).isPresent()
        || run.parts().stream()
            .anyMatch(
                part ->
                    part instanceof Part.Joint joint
                        && joint.standsIn().filter(basin::equals).isPresent());
  }

  /** Mean flow through a run when nothing fails (m³/s). */
  private double carries(Run run) {
    return flows
        .map(
            ledger ->
                ledger.entries().stream()
                        .filter(entry -> entry.path().equals(run.id()))
                        .mapToDouble(Ledger.Entry::volume)
                        .sum()
                    / ledger.until())
        .orElse(0.0);
  }

  private List<Vessel> in(Vessel basin) {
    return drawing.vessels().stream().filter(v -> v.standsIn().equals(basin.id())).toList();
  }

  private Stream<Warning> volume(Vessel basin) {
    List<Vessel> standing = in(basin).stream().filter(vessel -> !vessel.isBasin()).toList();
    double largest = standing.stream().mapToDouble(BasinRules::water).max().orElse(0);
    double all = standing.stream().mapToDouble(BasinRules::water).sum();
    double needed = Math.max(OF_THE_LARGEST * largest, OF_ALL * all);
    double holds = room(basin);
    return holds < needed
        ? Stream.of(new Warning.ContainmentSmall(basin.id(), holds, needed))
        : Stream.empty();
  }

  /** What a basin holds beside what stands in it (m³). */
  private double room(Vessel basin) {
    return basin.shape().capacity() - in(basin).stream().mapToDouble(v -> sunk(v, basin)).sum();
  }

  private static double water(Vessel vessel) {
    return vessel.shape().volumeBelow(vessel.level() - vessel.bottom());
  }

  /** What a vessel takes of the room in a basin up to the basin's rim (m³). */
  private static double sunk(Vessel vessel, Vessel basin) {
    double depth = Math.clamp(basin.rim() - vessel.bottom(), 0, vessel.shape().height());
    return vessel.shape().volumeBelow(depth);
  }

  private Stream<Warning> load(Vessel basin) {
    double area = basin.shape().areaAt(0);
    double water =
        Math.max(room(basin), 0) + in(basin).stream().mapToDouble(BasinRules::water).sum();
    double load = DENSITY * Physical.GRAVITY * water / area;
    return load > USUAL_LOAD && isUpstairs(basin)
        ? Stream.of(new Warning.FullBasinHeavy(basin.id(), load, USUAL_LOAD))
        : Stream.empty();
  }

  private boolean isUpstairs(Vessel basin) {
    double lowest = drawing.floors().stream().mapToDouble(Floor::elevation).min().orElse(0);
    return basin.bottom() > lowest + 1;
  }

  private Stream<Warning> pitPumps() {
    return drawing.controls().stream()
        .filter(LevelSwitch.class::isInstance)
        .map(LevelSwitch.class::cast)
        .filter(control -> control.action() == LevelSwitch.Action.EMPTIES)
        .filter(control -> isDry(control.vessel()))
        .flatMap(this::withoutBackup);
  }

  private boolean isDry(String place) {
    return drawing.floors().stream().anyMatch(floor -> floor.id().equals(place))
        || drawing.vessels().stream().anyMatch(v -> v.id().equals(place) && v.isBasin());
  }

  private Stream<Warning> withoutBackup(Control.LevelSwitch control) {
    return drawing.runs().stream()
        .flatMap(run -> run.parts().stream())
        .filter(Part.Pump.class::isInstance)
        .map(Part.Pump.class::cast)
        .filter(pump -> control.drives().contains(pump.id()))
        .filter(pump -> hasNoBackup(pump.power().circuit()))
        .map(
            pump ->
                new Warning.PitPumpWithoutBackup(
                    pump.id(), control.vessel(), pump.power().circuit()));
  }

  private boolean hasNoBackup(String id) {
    return drawing.circuits().stream()
        .anyMatch(circuit -> circuit.id().equals(id) && circuit.backup() <= 0);
  }
}
