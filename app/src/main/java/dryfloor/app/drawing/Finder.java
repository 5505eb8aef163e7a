package dryfloor.app.drawing;

import java.util.Comparator;
import java.util.Optional;

/** Finds what is drawn at a point of the paper: parts before runs, runs before vessels. */
final class Finder {

  /** So near (points) a part or run is meant. */
  private static final double REACH = 8;

  private final Paper paper;

  Finder(Paper paper) {
    this.paper = paper;
  }

  Optional<String> at(Point point) {
    return part(point).or(() -> run(point)).or(() -> vessel(point));
  }

  private Optional<String> part(Point point) {
    return paper.plan().pipes().stream()
        .flatMap(pipe -> pipe.fittings().stream())
        .filter(fixture -> paper.at(fixture.at()).distanceTo(point) <= REACH)
        .min(Comparator.comparingDouble(fixture -> paper.at(fixture.at()).distanceTo(point)))
        .map(Pipe.Fixture::id);
  }

  private Optional<String> run(Point point) {
    return paper.plan().pipes().stream()
        .filter(pipe -> distance(pipe, point) <= REACH)
        .min(Comparator.comparingDouble(pipe -> distance(pipe, point)))
        .map(Pipe::run);
  }

  private double distance(Pipe pipe, Point point) {
    return pipe.pieces().stream()
        .mapToDouble(piece -> distance(paper.at(piece.from()), paper.at(piece.to()), point))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  private static double distance(Point from, Point to, Point point) {
    double across = to.x() - from.x();
    double along = to.y() - from.y();
    double square = across * across + along * along;
    double share =
        square == 0
            ? 0
            : ((point.x() - from.x()) * across + (point.y() - from.y()) * along) / square;
    return from.towards(to, Math.clamp(share, 0, 1)).distanceTo(point);
  }

  /** The innermost one. */
  Optional<String> vessel(Point point) {
    return paper.plan().tanks().values().stream()
        .filter(tank -> holds(tank, point))
        .max(Comparator.comparingInt(Tank::depth))
        .map(Tank::id);
  }

  private boolean holds(Tank tank, Point point) {
    return point.x() >= paper.x(tank.left())
        && point.x() <= paper.x(tank.right())
        && point.y() >= paper.y(tank.rim())
        && point.y() <= paper.y(tank.bottom());
  }
}
