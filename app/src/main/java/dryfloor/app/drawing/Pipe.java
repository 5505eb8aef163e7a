package dryfloor.app.drawing;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A run in the elevation.
 *
 * @param run its id
 * @param line its course (m), true in every crest, low point and end
 * @param fittings the parts in it
 */
record Pipe(String run, List<Point> line, List<Fixture> fittings) {

  Pipe {
    line = List.copyOf(line);
    fittings = List.copyOf(fittings);
  }

  /**
   * A part of a run.
   *
   * @param id of the part
   * @param kind how it looks
   * @param at where it sits (m)
   * @param right how much the pipe runs to the right there, in the direction of the run
   * @param up how much it runs upwards
   */
  record Fixture(String id, Kind kind, Point at, double right, double up) {}

  /** How a part looks. */
  enum Kind {
    PUMP,
    VALVE,
    FLOAT_VALVE,
    CHECK_VALVE,
    SIPHON_BREAK,
    JOINT,
    STRAINER,
    RESTRICTOR,
    DEVICE
  }

  /** A straight piece. */
  record Piece(Point from, Point to) {
    double length() {
      return from.distanceTo(to);
    }

    boolean upright() {
      return Math.abs(from.x() - to.x()) < Math.abs(from.y() - to.y());
    }

    Point middle() {
      return from.towards(to, 0.5);
    }
  }

  List<Piece> pieces() {
    return IntStream.range(1, line.size())
        .mapToObj(i -> new Piece(line.get(i - 1), line.get(i)))
        .filter(piece -> piece.length() > 1e-9)
        .toList();
  }

  /** The middle of its longest piece. */
  Point middle() {
    return pieces().stream()
        .max(Comparator.comparingDouble(Piece::length))
        .map(Piece::middle)
        .orElse(line.getFirst());
  }

  double length() {
    return pieces().stream().mapToDouble(Piece::length).sum();
  }
}
