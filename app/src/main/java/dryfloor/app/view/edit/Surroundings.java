package dryfloor.app.view.edit;

import dryfloor.model.Installation;
import dryfloor.model.element.Floor;
import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import dryfloor.model.element.Storey;
import dryfloor.model.element.Vessel;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Where something new belongs: at or near what is chosen, or else where there is room.
 *
 * @param chosen id of what is chosen
 */
record Surroundings(Installation drawing, Optional<String> chosen) {

  /** Places to stand in, the nearest first: what is chosen, where that stands, then the floors. */
  List<String> places() {
    return Stream.of(
            chosen.stream().filter(this::isPlace),
            chosen.flatMap(this::vessel).map(Vessel::standsIn).stream(),
            drawing.floors().stream().map(Floor::id))
        .flatMap(ids -> ids)
        .distinct()
        .toList();
  }

  private boolean isPlace(String id) {
    return vessel(id).map(Vessel::isBasin).orElse(false)
        || drawing.floors().stream().anyMatch(floor -> floor.id().equals(id));
  }

  Optional<Vessel> vessel(String id) {
    return drawing.vessels().stream().filter(vessel -> vessel.id().equals(id)).findFirst();
  }

  /** Vessels with water, the chosen one first. */
  List<Vessel> vessels() {
    return drawing.vessels().stream()
        .filter(vessel -> !vessel.isBasin())
        .sorted(Comparator.comparing(vessel -> !chosen.equals(Optional.of(vessel.id()))))
        .toList();
  }

  /** The chosen run, that of the chosen part, or the first. */
  Optional<Run> run() {
    return drawing.runs().stream()
        .filter(
            run ->
                chosen
                    .map(
                        id ->
                            run.id().equals(id)
                                || run.parts().stream().anyMatch(part -> part.id().equals(id)))
                    .orElse(false))
        .findFirst()
        .or(() -> drawing.runs().stream().findFirst());
  }

  /** The vessel into which a run leads. */
  Optional<Vessel> target(Run run) {
    return vessel(run.to().at());
  }

  /** Elevation of the middle between a run's ends (m), as far as they have heights of their own. */
  double middle(Run run) {
    return Stream.of(run.from(), run.to())
        .filter(RunEnd.Opening.class::isInstance)
        .map(RunEnd.Opening.class::cast)
        .mapToDouble(RunEnd.Opening::elevation)
        .average()
        .orElse(0);
  }

  Optional<Storey> highest() {
    return drawing.storeys().stream().max(Comparator.comparingDouble(Storey::elevation));
  }

  Optional<Storey> lowest() {
    return drawing.storeys().stream().min(Comparator.comparingDouble(Storey::elevation));
  }

  /** The chosen storey, or that of the chosen floor, or the highest. */
  Optional<Storey> storey() {
    Optional<String> wanted =
        drawing.floors().stream()
            .filter(floor -> Optional.of(floor.id()).equals(chosen))
            .map(Floor::storey)
            .findFirst()
            .or(() -> chosen);
    return drawing.storeys().stream()
        .filter(storey -> Optional.of(storey.id()).equals(wanted))
        .findFirst()
        .or(this::highest);
  }
}
