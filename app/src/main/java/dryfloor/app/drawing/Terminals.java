package dryfloor.app.drawing;

import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Finds where runs can begin and end at a point of the paper. */
final class Terminals {

  /** So near (points) a single end or a floor is meant. */
  private static final double REACH = 14;

  private final Paper paper;

  Terminals(Paper paper) {
    this.paper = paper;
  }

  /** A junction, supply or drain. */
  Optional<String> end(Point point) {
    Set<String> drawn =
        Stream.of(
                paper.plan().installation().junctions().stream().map(j -> j.id()),
                paper.plan().installation().supplies().stream().map(s -> s.id()),
                paper.plan().installation().drains().stream().map(d -> d.id()))
            .flatMap(ids -> ids)
            .collect(Collectors.toSet());
    return paper.plan().ends().entrySet().stream()
        .filter(end -> drawn.contains(end.getKey()))
        .filter(end -> paper.at(end.getValue()).distanceTo(point) <= REACH)
        .min(Comparator.comparingDouble(end -> paper.at(end.getValue()).distanceTo(point)))
        .map(Map.Entry::getKey);
  }

  /** The floor of a room, by its line. */
  Optional<String> floor(Point point) {
    return paper.plan().rooms().stream()
        .filter(
            room ->
                point.x() >= paper.x(room.left())
                    && point.x() <= paper.x(room.right())
                    && Math.abs(point.y() - paper.y(room.floor().elevation())) <= REACH)
        .findFirst()
        .map(room -> room.floor().id());
  }
}
