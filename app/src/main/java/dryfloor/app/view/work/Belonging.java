package dryfloor.app.view.work;

import dryfloor.model.Installation;
import dryfloor.model.element.CirculationPump;
import dryfloor.model.element.Control;
import dryfloor.model.element.Floor;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.element.Storey;
import dryfloor.model.element.Vessel;
import dryfloor.model.part.Part;
import dryfloor.model.part.Power;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Which circuit feeds a component, and on which storeys it is. */
public final class Belonging {

  private final Installation installation;
  private final Map<String, Set<String>> circuits = new LinkedHashMap<>();
  private final Map<String, Set<String>> storeys = new LinkedHashMap<>();

  /** What belongs where in this drawing. */
  public Belonging(Installation installation) {
    this.installation = installation;
    installation.circuits().forEach(circuit -> fed(circuit.id(), circuit.id()));
    installation.circulationPumps().forEach(this::circulationPump);
    installation.floors().forEach(floor -> on(floor.id(), floor.storey()));
    installation.vessels().forEach(vessel -> on(vessel.id(), storey(vessel)));
    installation.weirs().forEach(weir -> sameStoreys(weir.id(), weir.from()));
    installation.junctions().forEach(junction -> at(junction.id(), junction.elevation()));
    installation.supplies().forEach(supply -> at(supply.id(), supply.elevation()));
    installation.drains().forEach(drain -> at(drain.id(), drain.elevation()));
    installation.runs().forEach(this::run);
    installation.controls().forEach(this::control);
  }

  /** Ids of the circuits that feed a component, or that it is. */
  public Set<String> circuits(String component) {
    return Set.copyOf(circuits.getOrDefault(component, Set.of()));
  }

  /** Ids of the storeys that a component is on; of both its ends for a run. */
  public Set<String> storeys(String component) {
    return Set.copyOf(storeys.getOrDefault(component, Set.of()));
  }

  private void fed(String component, String circuit) {
    circuits.computeIfAbsent(component, id -> new HashSet<>()).add(circuit);
  }

  private void on(String component, String storey) {
    storeys.computeIfAbsent(component, id -> new HashSet<>()).add(storey);
  }

  private void sameStoreys(String component, String as) {
    storeys(as).forEach(storey -> on(component, storey));
  }

  private void circulationPump(CirculationPump pump) {
    fed(pump.id(), pump.power().circuit());
    installation.vessels().stream()
        .filter(vessel -> vessel.id().equals(pump.vessel()))
        .forEach(vessel -> on(pump.id(), storey(vessel)));
  }

  /** The storey of the floor that it stands on, through whatever it stands in. */
  private String storey(Vessel vessel) {
    Optional<String> floor =
        installation.floors().stream()
            .filter(f -> f.id().equals(vessel.standsIn()))
            .map(Floor::storey)
            .findFirst();
    return floor.orElseGet(
        () ->
            installation.vessels().stream()
                .filter(outer -> outer.id().equals(vessel.standsIn()))
                .map(this::storey)
                .findFirst()
                .orElse(""));
  }

  /** The highest storey whose floor is not above an elevation (m); below all, the lowest. */
  private void at(String component, double elevation) {
    Storey best = null;
    for (Storey storey : installation.storeys()) {
      boolean under = storey.elevation() <= elevation;
      boolean better =
          best == null
              || (under
                  ? best.elevation() > elevation || storey.elevation() > best.elevation()
                  : best.elevation() > elevation && storey.elevation() < best.elevation());
      best = better ? storey : best;
    }
    Optional.ofNullable(best).ifPresent(storey -> on(component, storey.id()));
  }

  private void run(Run run) {
    end(run, run.from());
    end(run, run.to());
    for (Part part : run.parts()) {
      sameStoreys(part.id(), run.id());
      power(part).ifPresent(power -> fed(part.id(), power.circuit()));
      circuits(part.id()).forEach(circuit -> fed(run.id(), circuit));
    }
  }

  private void end(Run run, RunEnd end) {
    sameStoreys(run.id(), end.at());
  }

  private static Optional<Power> power(Part part) {
    return switch (part) {
      case Part.Pump pump -> Optional.of(pump.power());
      case Part.Valve valve ->
          switch (valve.drive()) {
            case Part.Valve.Drive.Powered powered -> Optional.of(powered.power());
            case Part.Valve.Drive.Hand hand -> Optional.empty();
          };
      case Part.FloatValve floatValve -> Optional.empty();
      case Part.CheckValve checkValve -> Optional.empty();
      case Part.SiphonBreak siphonBreak -> Optional.empty();
      case Part.Joint joint -> Optional.empty();
      case Part.Strainer strainer -> Optional.empty();
      case Part.Restrictor restrictor -> Optional.empty();
      case Part.Device device -> Optional.empty();
    };
  }

  /** A control belongs to what it feels and to what it drives. */
  private void control(Control control) {
    switch (control) {
      case Control.LevelSwitch level -> sameStoreys(control.id(), level.vessel());
      case Control.LeakSensor sensor -> sameStoreys(control.id(), sensor.in());
      case Control.Timer timer -> {}
      case Control.HandSwitch hand -> {}
    }
    for (String driven : control.drives()) {
      sameStoreys(control.id(), driven);
      circuits(driven).forEach(circuit -> fed(control.id(), circuit));
    }
  }
}
