package dryfloor.app.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The line of one pipe, height by height.
 *
 * @param from first end
 * @param to second end
 * @param heights of the ends and of every crest and low point between them (m)
 * @param firstAtTo number of the first height that belongs to the second end
 */
record Course(Terminus from, Terminus to, List<Double> heights, int firstAtTo) {

  /**
   * Corners of the line.
   *
   * @param jog height at which it changes over from the first end's side to the second's; none for
   *     the higher of the two heights between which it does
   */
  List<Point> line(Optional<Double> jog) {
    List<Point> line = new ArrayList<>();
    line.add(from.point());
    int last = heights.size() - 1;
    for (int i = 1; i <= last; i++) {
      double below = heights.get(i - 1);
      double above = heights.get(i);
      if (i < firstAtTo && i < last) {
        upright(line, i == 1 ? from.column() : from.channel(), above);
      } else if (i > firstAtTo) {
        upright(line, i == last ? to.column() : to.channel(), above);
      } else {
        changeOver(line, i, height(below, above, jog));
      }
    }
    line.add(to.point());
    return tidy(line);
  }

  private void changeOver(List<Point> line, int i, double height) {
    int last = heights.size() - 1;
    upright(line, i == 1 ? from.column() : from.channel(), height);
    upright(line, i == last ? to.column() : to.channel(), heights.get(i));
  }

  private double height(double one, double other, Optional<Double> jog) {
    double low = Math.min(one, other);
    double high = Math.max(one, other);
    if (jog.isPresent()) {
      return Math.clamp(jog.get(), low, high);
    }
    if (to.fixedHeight()) {
      return other;
    }
    return from.fixedHeight() ? one : high;
  }

  private static void upright(List<Point> line, double column, double height) {
    line.add(new Point(column, line.getLast().y()));
    line.add(new Point(column, height));
  }

  /** Without corners that are none. */
  private static List<Point> tidy(List<Point> line) {
    List<Point> tidy = new ArrayList<>();
    for (Point point : line) {
      if (!tidy.isEmpty() && tidy.getLast().distanceTo(point) < 1e-9) {
        continue;
      }
      if (tidy.size() > 1 && straight(tidy.get(tidy.size() - 2), tidy.getLast(), point)) {
        tidy.removeLast();
      }
      tidy.add(point);
    }
    return tidy;
  }

  private static boolean straight(Point a, Point b, Point c) {
    boolean upright = a.x() == b.x() && b.x() == c.x() && (b.y() - a.y()) * (c.y() - b.y()) > 0;
    boolean level = a.y() == b.y() && b.y() == c.y() && (b.x() - a.x()) * (c.x() - b.x()) > 0;
    return upright || level;
  }
}
