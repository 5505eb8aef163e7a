package dryfloor.analysis.failure;

import dryfloor.model.element.Run;
import dryfloor.model.element.RunEnd;
import java.util.ArrayDeque;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Where the water lands that leaves a run on its way.
 *
 * <p>First what the joint, pump or device there is said to stand in, then what the run is said to
 * stand in. Where the drawing says neither, the water lands beside the vessel at the nearer end, in
 * what that vessel stands in and never in the vessel itself: a designer who counts on a joint over
 * the sump says so. Water does not land above the place it leaves: the farther end decides if the
 * nearer one's ground is higher. An end that is no place leads on through its junction to the next
 * place.
 */
final class Landing {

  private final Drawing drawing;

  Landing(Drawing drawing) {
    this.drawing = drawing;
  }

  /**
   * Id of the vessel or floor reached by water that leaves a run.
   *
   * @param said what the joint, pump or device at or close to that place is said to stand in
   * @param along distance from the run's first end (m)
   * @param elevation of the place (m)
   * @throws IllegalArgumentException if the drawing does not say and no end of the run leads to a
   *     vessel or floor
   */
  String from(Optional<String> said, Run run, double along, double elevation) {
    return said.or(run::standsIn)
        .or(() -> besideTheEnds(run, along, elevation))
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "run \""
                        + run.id()
                        + "\" reaches no vessel or floor, so it must say what it stands in"));
  }

  private Optional<String> besideTheEnds(Run run, double along, double elevation) {
    boolean firstIsNearer = along <= run.length() / 2;
    RunEnd nearer = firstIsNearer ? run.from() : run.to();
    RunEnd farther = firstIsNearer ? run.to() : run.from();
    Optional<String> near = groundAt(nearer);
    Optional<String> far = groundAt(farther);
    if (near.isPresent() && drawing.bottomOf(near.get()) > elevation) {
      return far.filter(ground -> drawing.bottomOf(ground) <= elevation).or(() -> near);
    }
    return near.or(() -> far);
  }

  private Optional<String> groundAt(RunEnd end) {
    return switch (end) {
      case RunEnd.Opening opening -> Optional.of(ground(opening));
      case RunEnd.AtJunction junction -> groundBehind(junction);
      case RunEnd.AtSupply supply -> Optional.empty();
      case RunEnd.AtDrain drain -> Optional.empty();
    };
  }

  private String ground(RunEnd.Opening opening) {
    return drawing.isVessel(opening.at()) ? drawing.vessel(opening.at()).standsIn() : opening.at();
  }

  /** The ground of the place that is fewest runs away; by id where several are. */
  private Optional<String> groundBehind(RunEnd.AtJunction start) {
    Set<String> seen = new LinkedHashSet<>(List.of(start.at()));
    ArrayDeque<String> open = new ArrayDeque<>(seen);
    while (!open.isEmpty()) {
      List<RunEnd> next = otherEnds(open.removeFirst());
      Optional<RunEnd.Opening> place =
          next.stream()
              .filter(RunEnd.Opening.class::isInstance)
              .map(RunEnd.Opening.class::cast)
              .min(Comparator.comparing(RunEnd.Opening::at));
      if (place.isPresent()) {
        return place.map(this::ground);
      }
      next.stream()
          .filter(end -> end instanceof RunEnd.AtJunction && seen.add(end.at()))
          .forEach(end -> open.addLast(end.at()));
    }
    return Optional.empty();
  }

  private List<RunEnd> otherEnds(String junction) {
    return Drawing.byId(drawing.installation().runs())
        .flatMap(
            run ->
                run.from().at().equals(junction)
                    ? Optional.of(run.to()).stream()
                    : run.to().at().equals(junction)
                        ? Optional.of(run.from()).stream()
                        : Optional.<RunEnd>empty().stream())
        .toList();
  }
}
