package dryfloor.model.check;

import dryfloor.model.Installation;
import dryfloor.model.element.CirculationPump;
import dryfloor.model.element.Control;
import dryfloor.model.element.Element;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.part.Part;
import dryfloor.model.part.Power;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Checks that every id that something refers to is drawn and is of the right kind. */
final class ReferenceCheck {

  /** Ids that fit, and what they are called. */
  private record Wanted(Set<String> ids, String description) {}

  private final Drawing drawing;
  private final Findings findings;
  private final Set<String> allIds;
  private final Wanted vessel;
  private final Wanted place;
  private final Wanted circuit;
  private final Wanted powered;
  private final Wanted junction;
  private final Wanted supply;
  private final Wanted drain;

  ReferenceCheck(Drawing drawing, Findings findings) {
    this.drawing = drawing;
    this.findings = findings;
    Installation installation = drawing.installation();
    Set<String> places = new HashSet<>(drawing.vessels().keySet());
    places.addAll(drawing.floors().keySet());
    allIds = new HashSet<>(drawing.parts().keySet());
    installation.elements().map(Element::id).forEach(allIds::add);
    vessel = new Wanted(drawing.vessels().keySet(), "a vessel");
    place = new Wanted(places, "a floor or vessel");
    circuit = wanted(installation.circuits(), "a circuit");
    junction = wanted(installation.junctions(), "a junction");
    supply = wanted(installation.supplies(), "a supply");
    drain = wanted(installation.drains(), "a drain");
    powered = new Wanted(poweredIds(installation), "a pump, circulation pump or powered valve");
  }

  private static Wanted wanted(List<? extends Element> elements, String description) {
    return new Wanted(elements.stream().map(Element::id).collect(Collectors.toSet()), description);
  }

  private Set<String> poweredIds(Installation installation) {
    Set<String> ids = new HashSet<>();
    installation.circulationPumps().forEach(pump -> ids.add(pump.id()));
    drawing.parts().values().stream()
        .filter(part -> powerOf(part).isPresent())
        .forEach(part -> ids.add(part.id()));
    return ids;
  }

  /** How a part is fed, for those that are. */
  static Optional<Power> powerOf(Part part) {
    return switch (part) {
      case Part.Pump pump -> Optional.of(pump.power());
      case Part.Valve valve ->
          switch (valve.drive()) {
            case Part.Valve.Drive.Powered drive -> Optional.of(drive.power());
            case Part.Valve.Drive.Hand hand -> Optional.empty();
          };
      case Part.FloatValve other -> Optional.empty();
      case Part.CheckValve other -> Optional.empty();
      case Part.SiphonBreak other -> Optional.empty();
      case Part.Joint other -> Optional.empty();
      case Part.Strainer other -> Optional.empty();
      case Part.Restrictor other -> Optional.empty();
      case Part.Device other -> Optional.empty();
    };
  }

  void run() {
    Installation installation = drawing.installation();
    Wanted storey = wanted(installation.storeys(), "a storey");
    installation
        .floors()
        .forEach(
            floor -> {
              check(floor.id(), "storey", floor.storey(), storey);
              floor.spillsTo().ifPresent(to -> check(floor.id(), "spillsTo", to, place));
            });
    installation.vessels().forEach(v -> check(v.id(), "standsIn", v.standsIn(), place));
    installation
        .weirs()
        .forEach(
            weir -> {
              check(weir.id(), "from", weir.from(), vessel);
              check(weir.id(), "to", weir.to(), vessel);
            });
    installation.runs().forEach(this::checkRun);
    installation.circulationPumps().forEach(this::checkCirculationPump);
    installation.controls().forEach(this::checkControl);
    List<?> topUps = installation.failureSettings().topUps();
    for (int i = 0; i < topUps.size(); i++) {
      String id = installation.failureSettings().topUps().get(i).vessel();
      check("", "failures.topUps[" + i + "].vessel", id, vessel);
    }
  }

  private void checkRun(Run run) {
    checkEnd(run, "from", run.from());
    checkEnd(run, "to", run.to());
    run.standsIn().ifPresent(id -> check(run.id(), "standsIn", id, place));
    run.parts().forEach(this::checkPart);
  }

  private void checkEnd(Run run, String field, RunEnd end) {
    Wanted wanted =
        switch (end) {
          case RunEnd.Opening opening -> place;
          case RunEnd.AtJunction there -> junction;
          case RunEnd.AtSupply there -> supply;
          case RunEnd.AtDrain there -> drain;
        };
    check(run.id(), field, end.at(), wanted);
  }

  private void checkPart(Part part) {
    powerOf(part).ifPresent(power -> checkPower(part.id(), power));
    landingOf(part).ifPresent(id -> check(part.id(), "standsIn", id, place));
    switch (part) {
      case Part.FloatValve valve -> check(valve.id(), "vessel", valve.vessel(), vessel);
      case Part.SiphonBreak hole ->
          hole.coveredBy().ifPresent(id -> check(hole.id(), "coveredBy", id, vessel));
      case Part.Pump other -> {}
      case Part.Valve other -> {}
      case Part.CheckValve other -> {}
      case Part.Joint other -> {}
      case Part.Strainer other -> {}
      case Part.Restrictor other -> {}
      case Part.Device other -> {}
    }
  }

  /** Where a part says that its water lands. */
  static Optional<String> landingOf(Part part) {
    return switch (part) {
      case Part.Pump pump -> pump.standsIn();
      case Part.Joint joint -> joint.standsIn();
      case Part.Device device -> device.standsIn();
      case Part.Valve other -> Optional.empty();
      case Part.FloatValve other -> Optional.empty();
      case Part.CheckValve other -> Optional.empty();
      case Part.SiphonBreak other -> Optional.empty();
      case Part.Strainer other -> Optional.empty();
      case Part.Restrictor other -> Optional.empty();
    };
  }

  private void checkCirculationPump(CirculationPump pump) {
    check(pump.id(), "vessel", pump.vessel(), vessel);
    checkPower(pump.id(), pump.power());
  }

  private void checkPower(String id, Power power) {
    check(id, "power.circuit", power.circuit(), circuit);
  }

  private void checkControl(Control control) {
    switch (control) {
      case Control.LevelSwitch level -> check(level.id(), "in", level.vessel(), place);
      case Control.LeakSensor sensor -> check(sensor.id(), "in", sensor.in(), place);
      case Control.Timer timer -> {}
      case Control.HandSwitch hand -> {}
    }
    for (int i = 0; i < control.drives().size(); i++) {
      check(control.id(), "drives[" + i + "]", control.drives().get(i), powered);
    }
  }

  private void check(String owner, String field, String id, Wanted wanted) {
    if (!wanted.ids().contains(id) && !drawing.unread().contains(id)) {
      boolean drawn = allIds.contains(id);
      findings.error(
          owner,
          field,
          drawn
              ? "'" + id + "' is not " + wanted.description()
              : "nothing is drawn with the id '" + id + "'",
          field + " names " + wanted.description());
    }
  }
}
