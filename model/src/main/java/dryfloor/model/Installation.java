package dryfloor.model;

import dryfloor.model.element.Circuit;
import dryfloor.model.element.CirculationPump;
import dryfloor.model.element.Control;
import dryfloor.model.element.Drain;
import dryfloor.model.element.Element;
import dryfloor.model.element.Floor;
import dryfloor.model.element.Junction;
import dryfloor.model.element.Run;
import dryfloor.model.element.Storey;
import dryfloor.model.element.Supply;
import dryfloor.model.element.Vessel;
import dryfloor.model.element.Weir;
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
    FailureSettings failureSettings) {

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

  /** The same installation with other vessels. */
  public Installation withVessels(List<Vessel> other) {
    return new Installation(
        name,
        conditions,
        storeys,
        floors,
        other,
        weirs,
        junctions,
        supplies,
        drains,
        runs,
        circulationPumps,
        circuits,
        controls,
        failureSettings);
  }

  /** The same installation with other runs. */
  public Installation withRuns(List<Run> other) {
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
        other,
        circulationPumps,
        circuits,
        controls,
        failureSettings);
  }
}
