package dryfloor.analysis.band;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Where each uncertain value is.
 *
 * @param shares one for each: -1 at its lower end, 0 as drawn, 1 at its upper end
 */
public record Point(List<Double> shares) {

  public Point {
    shares = List.copyOf(shares);
  }

  /** All as drawn. */
  static Point asDrawn(int values) {
    return new Point(Collections.nCopies(values, 0.0));
  }

  /** The same with one value elsewhere. */
  Point with(int value, double share) {
    List<Double> other = new ArrayList<>(shares);
    other.set(value, share);
    return new Point(other);
  }

  /** One of the corners, at which each value is at an end: the bits of a number say at which. */
  static Point corner(int values, int bits) {
    return new Point(
        IntStream.range(0, values).mapToObj(i -> (bits >> i & 1) == 1 ? 1.0 : -1.0).toList());
  }
}
