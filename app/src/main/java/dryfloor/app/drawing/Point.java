package dryfloor.app.drawing;

/**
 * A point of the building (metres, y upwards) or of the paper (points, y downwards).
 *
 * @param x to the right
 * @param y elevation in the building, distance from the top on paper
 */
public record Point(double x, double y) {

  Point moved(double right, double along) {
    return new Point(x + right, y + along);
  }

  double distanceTo(Point other) {
    return Math.hypot(other.x - x, other.y - y);
  }

  /** The point so far on the way to another, 0 here and 1 there. */
  Point towards(Point other, double share) {
    return new Point(x + share * (other.x - x), y + share * (other.y - y));
  }
}
