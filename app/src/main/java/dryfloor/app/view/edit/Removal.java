package dryfloor.app.view.edit;

import dryfloor.model.FailureSettings;
import dryfloor.model.Installation;
import dryfloor.model.Sequence;
import dryfloor.model.Tolerance;
import dryfloor.model.element.CirculationPump;
import dryfloor.model.element.Control;
import dryfloor.model.element.Element;
import dryfloor.model.element.Floor;
import dryfloor.model.element.Run;
import dryfloor.model.element.Vessel;
import dryfloor.model.part.Part;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Takes an element or part out of a drawing, with what can't be without it: runs that end there,
 * edges to it, floats and switches in it. What stood in it stands where it stood, at the same
 * height.
 */
final class Removal {

  private final Installation drawing;
  private final String id;

  /** Where things stand now that stood in it. */
  private final Optional<String> instead;

  private final Set<String> gone;

  private Removal(Installation drawing, String id) {
    this.drawing = drawing;
    this.id = id;
    this.instead =
        drawing.vessels().stream()
            .filter(vessel -> vessel.id().equals(id))
            .map(Vessel::standsIn)
            .findFirst();
    this.gone =
        Stream.concat(
                Stream.of(id),
                drawing.runs().stream()
                    .filter(this::isLost)
                    .flatMap(
                        run ->
                            Stream.concat(Stream.of(run.id()), run.parts().stream().map(Part::id))))
            .collect(Collectors.toSet());
    drawing.runs().stream()
        .flatMap(run -> run.parts().stream())
        .filter(part -> part instanceof Part.FloatValve valve && valve.vessel().equals(id))
        .map(Part::id)
        .forEach(gone::add);
    drawing.circulationPumps().stream()
        .filter(pump -> pump.vessel().equals(id))
        .map(CirculationPump::id)
        .forEach(gone::add);
  }

  static Installation of(Installation drawing, String id) {
    return new Removal(drawing, id).result();
  }

  private boolean isLost(Run run) {
    return run.id().equals(id) || run.from().at().equals(id) || run.to().at().equals(id);
  }

  private Installation result() {
    Installation rest =
        new Installation(
            drawing.name(),
            drawing.conditions(),
            kept(drawing.storeys(), storey -> true),
            kept(drawing.floors(), floor -> true).stream().map(this::floor).toList(),
            kept(drawing.vessels(), vessel -> true).stream().map(this::vessel).toList(),
            kept(drawing.weirs(), weir -> !weir.from().equals(id) && !weir.to().equals(id)),
            kept(drawing.junctions(), junction -> true),
            kept(drawing.supplies(), supply -> true),
            kept(drawing.drains(), drain -> true),
            kept(drawing.runs(), run -> true).stream().map(this::run).toList(),
            kept(drawing.circulationPumps(), pump -> true),
            kept(drawing.circuits(), circuit -> true),
            drawing.controls().stream().flatMap(control -> control(control).stream()).toList(),
            failures(drawing.failureSettings()));
    return rest.withTolerances(tolerances(rest));
  }

  /**
   * Those of what is still there. Of top-ups and events only the place in their list is known,
   * which may be another now.
   */
  private List<Tolerance> tolerances(Installation rest) {
    boolean sameLists = rest.failureSettings().equals(drawing.failureSettings());
    Set<String> there =
        Stream.concat(
                rest.elements().map(Element::id),
                rest.runs().stream().flatMap(run -> run.parts().stream()).map(Part::id))
            .collect(Collectors.toSet());
    return drawing.tolerances().stream()
        .filter(
            tolerance ->
                tolerance.of().isEmpty()
                    ? sameLists || !tolerance.field().startsWith("failures.")
                    : there.contains(tolerance.of()))
        .toList();
  }

  private <T extends Element> List<T> kept(List<T> all, Predicate<T> also) {
    return all.stream().filter(e -> !gone.contains(e.id()) && also.test(e)).toList();
  }

  private Floor floor(Floor floor) {
    return new Floor(
        floor.id(),
        floor.name(),
        floor.storey(),
        floor.elevation(),
        floor.area(),
        floor.sill(),
        floor.sillLength(),
        floor.spillsTo().flatMap(this::place));
  }

  /** The place, or what takes its place. */
  private Optional<String> place(String place) {
    return place.equals(id) ? instead : Optional.of(place);
  }

  private Vessel vessel(Vessel vessel) {
    return vessel.withStandsIn(place(vessel.standsIn()).orElse(vessel.standsIn()));
  }

  private Run run(Run run) {
    return run.withParts(
            run.parts().stream().filter(p -> !gone.contains(p.id())).map(this::part).toList())
        .withStandsIn(run.standsIn().flatMap(this::place));
  }

  private Part part(Part part) {
    return switch (part) {
      case Part.Pump p ->
          new Part.Pump(
              p.id(),
              p.name(),
              p.along(),
              p.curve(),
              p.speed(),
              p.kind(),
              p.power(),
              p.stoppedLoss(),
              p.primesAgain(),
              p.standsIn().flatMap(this::place));
      case Part.SiphonBreak p ->
          new Part.SiphonBreak(
              p.id(),
              p.name(),
              p.along(),
              p.elevation(),
              p.diameter(),
              p.count(),
              p.coveredBy().filter(cover -> !cover.equals(id)));
      case Part.Joint p ->
          new Part.Joint(
              p.id(),
              p.name(),
              p.along(),
              p.elevation(),
              p.kind(),
              p.standsIn().flatMap(this::place));
      case Part.Device p ->
          new Part.Device(
              p.id(),
              p.name(),
              p.along(),
              p.kind(),
              p.elevation(),
              p.loss(),
              p.holds(),
              p.cupOverflow(),
              p.standsIn().flatMap(this::place));
      case Part.Valve p -> p;
      case Part.FloatValve p -> p;
      case Part.CheckValve p -> p;
      case Part.Strainer p -> p;
      case Part.Restrictor p -> p;
    };
  }

  /** A control in what is gone is gone; one that has lost all that it switched, too. */
  private Optional<Control> control(Control control) {
    List<String> drives = control.drives().stream().filter(part -> !gone.contains(part)).toList();
    boolean idle = drives.isEmpty() && !control.drives().isEmpty();
    if (gone.contains(control.id()) || idle) {
      return Optional.empty();
    }
    return switch (control) {
      case Control.LevelSwitch c ->
          c.vessel().equals(id)
              ? Optional.empty()
              : Optional.of(
                  new Control.LevelSwitch(
                      c.id(), c.name(), c.vessel(), c.lower(), c.upper(), c.action(), drives));
      case Control.LeakSensor c ->
          c.in().equals(id)
              ? Optional.empty()
              : Optional.of(
                  new Control.LeakSensor(c.id(), c.name(), c.in(), c.depth(), c.delay(), drives));
      case Control.Timer c ->
          Optional.of(new Control.Timer(c.id(), c.name(), c.longestRun(), drives));
      case Control.HandSwitch c ->
          Optional.of(new Control.HandSwitch(c.id(), c.name(), c.on(), drives));
    };
  }

  private FailureSettings failures(FailureSettings settings) {
    return new FailureSettings(
        settings.skipped().stream().filter(skipped -> !isGone(skipped.failure())).toList(),
        settings.topUps().stream().filter(topUp -> !gone.contains(topUp.vessel())).toList(),
        settings.sequences().stream().filter(this::canStillHappen).toList(),
        settings.dripArea(),
        settings.outage(),
        settings.surge());
  }

  private boolean isGone(String failure) {
    return Arrays.stream(failure.split("\\.", -1)).anyMatch(gone::contains);
  }

  /** A sequence of which an event is gone would tell another story, so all of it is gone. */
  private boolean canStillHappen(Sequence sequence) {
    return sequence.events().stream()
        .noneMatch(
            event ->
                switch (event) {
                  case Sequence.Event.Begins begins -> isGone(begins.failure());
                  case Sequence.Event.Ends ends -> isGone(ends.failure());
                  case Sequence.Event.Pours pours -> gone.contains(pours.vessel());
                  case Sequence.Event.Takes takes -> gone.contains(takes.vessel());
                });
  }
}
