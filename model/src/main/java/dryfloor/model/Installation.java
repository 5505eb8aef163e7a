package dryfloor.model;

import dryfloor.model.element.Circuit;
import dryfloor.model.element.CirculationPump;
import dryfloor.model.element.Control;
import dryfloor.model.element.Drain;
import dryfloor.model.element.Element;
import dryfloor.model.element.Floor;
import dryfloor.model.element.Junction;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.element.Storey;
import dryfloor.model.element.Supply;
import dryfloor.model.element.Vessel;
import dryfloor.model.element.Weir;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * A whole installation, as one file describes it.
 *
 * <p>An installation that was read from a file has passed every check of {@code
 * dryfloor.model.check}; one that is built in code should be passed through them before use.
 *
 * @param name what people call it
 * @param conditions water temperature, unattended time and what else holds for the whole
 * @param failureSettings what the user says about failures
 * @param tolerances which of its quantities are known within limits only; everything else here is
 *     the value that is drawn
 */
public record Installation(
    String name,
    Conditions conditions,
    List<Storey> storeys,
    List<Floor> floors,
    List<Vessel> vessels,
    List<Weir> weirs,
    List<Junction> junctions,
    List<Supply> supplies,
    List<Drain> drains,
    List<Run> runs,
    List<CirculationPump> circulationPumps,
    List<Circuit> circuits,
    List<Control> controls,
    FailureSettings failureSettings,
    List<Tolerance> tolerances) {

  public Installation {
    storeys = List.copyOf(storeys);
    floors = List.copyOf(floors);
    vessels = List.copyOf(vessels);
    weirs = List.copyOf(weirs);
    junctions = List.copyOf(junctions);
    supplies = List.copyOf(supplies);
    drains = List.copyOf(drains);
    runs = List.copyOf(runs);
    circulationPumps = List.copyOf(circulationPumps);
    circuits = List.copyOf(circuits);
    controls = List.copyOf(controls);
    tolerances = List.copyOf(tolerances);
  }

  /** An installation of which everything is known. */
  public Installation(
      String name,
      Conditions conditions,
      List<Storey> storeys,
      List<Floor> floors,
      List<Vessel> vessels,
      List<Weir> weirs,
      List<Junction> junctions,
      List<Supply> supplies,
      List<Drain> drains,
      List<Run> runs,
      List<CirculationPump> circulationPumps,
      List<Circuit> circuits,
      List<Control> controls,
      FailureSettings failureSettings) {
    this(
        name,
        conditions,
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
        failureSettings,
        List.of());
  }

  /** Every element, in the order of the drawing. */
  public Stream<Element> elements() {
    return Stream.of(
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
            controls)
        .flatMap(List::stream);
  }

  /** How many things are drawn: elements and the parts inside runs. */
  public int componentCount() {
    return (int) elements().count() + runs.stream().mapToInt(run -> run.parts().size()).sum();
  }

  /** The storey on which something at this elevation (m) is: the lowest for all below it. */
  public Storey storeyAt(double elevation) {
    return storeys.stream()
        .filter(storey -> storey.elevation() <= elevation)
        .max(Comparator.comparingDouble(Storey::elevation))
        .orElseGet(
            () ->
                storeys.stream().min(Comparator.comparingDouble(Storey::elevation)).orElseThrow());
  }

  /** Elevation of an end of a run (m); the end must be somewhere in this installation. */
  public double elevationOf(RunEnd end) {
    return switch (end) {
      case RunEnd.Opening opening -> opening.elevation();
      case RunEnd.AtJunction at -> named(junctions, at.at()).elevation();
      case RunEnd.AtSupply at -> named(supplies, at.at()).elevation();
      case RunEnd.AtDrain at -> named(drains, at.at()).elevation();
    };
  }

  private static <E extends Element> E named(List<E> all, String id) {
    return all.stream().filter(element -> element.id().equals(id)).findFirst().orElseThrow();
  }

  /** The same installation with another name. */
  public Installation withName(String other) {
    return with(other, conditions, vessels, weirs, junctions, runs, circuits, failureSettings);
  }

  /** The same installation in other conditions. */
  public Installation withConditions(Conditions other) {
    return with(name, other, vessels, weirs, junctions, runs, circuits, failureSettings);
  }

  /** The same installation with other vessels. */
  public Installation withVessels(List<Vessel> other) {
    return with(name, conditions, other, weirs, junctions, runs, circuits, failureSettings);
  }

  /** The same installation with other weirs. */
  public Installation withWeirs(List<Weir> other) {
    return with(name, conditions, vessels, other, junctions, runs, circuits, failureSettings);
  }

  /** The same installation with other junctions. */
  public Installation withJunctions(List<Junction> other) {
    return with(name, conditions, vessels, weirs, other, runs, circuits, failureSettings);
  }

  /** The same installation with other runs. */
  public Installation withRuns(List<Run> other) {
    return with(name, conditions, vessels, weirs, junctions, other, circuits, failureSettings);
  }

  /** The same installation with other circuits. */
  public Installation withCircuits(List<Circuit> other) {
    return with(name, conditions, vessels, weirs, junctions, runs, other, failureSettings);
  }

  /** The same installation with other controls. */
  public Installation withControls(List<Control> other) {
    return new Installation(
        name,
        conditions,
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
        other,
        failureSettings,
        tolerances);
  }

  /** The same installation with something else said about its failures. */
  public Installation withFailureSettings(FailureSettings other) {
    return with(name, conditions, vessels, weirs, junctions, runs, circuits, other);
  }

  /** The same installation with other things said about what is not known exactly. */
  public Installation withTolerances(List<Tolerance> other) {
    return new Installation(
        name,
        conditions,
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
        failureSettings,
        other);
  }

  /** Whether this field of the element or part with this id is known within limits only. */
  public boolean isUncertain(String id, String field) {
    return tolerances.stream().anyMatch(t -> t.of().equals(id) && t.field().equals(field));
  }

  private Installation with(
      String aName,
      Conditions someConditions,
      List<Vessel> someVessels,
      List<Weir> someWeirs,
      List<Junction> someJunctions,
      List<Run> someRuns,
      List<Circuit> someCircuits,
      FailureSettings someSettings) {
    return new Installation(
        aName,
        someConditions,
        storeys,
        floors,
        someVessels,
        someWeirs,
        someJunctions,
        supplies,
        drains,
        someRuns,
        circulationPumps,
        someCircuits,
        controls,
        someSettings,
        tolerances);
  }
}
