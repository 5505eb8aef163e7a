package dryfloor.app.drawing;

import java.util.List;

/**
 * Puts the building on paper, one scale for width and height.
 *
 * @param plan of the building
 * @param scale points for each metre
 * @param left where the building's left end is (points)
 * @param top where its highest elevation is (points)
 */
record Paper(Plan plan, double scale, double left, double top) {

  /** So many steps at once, and how far apart (points) they have to be. */
  private static final List<Integer> STEPS = List.of(1, 2, 4, 10, 20);

  private static final double APART = 16;

  double x(double across) {
    return left + scale * across;
  }

  double y(double elevation) {
    return top + scale * (plan.top() - elevation);
  }

  Point at(double across, double elevation) {
    return new Point(x(across), y(elevation));
  }

  Point at(Point point) {
    return at(point.x(), point.y());
  }

  /** Steps of the scale of heights (m), so far apart that their numbers can stand at them. */
  double step(Scene scene) {
    double single = scene.heights().step();
    return STEPS.stream()
        .map(times -> times * single)
        .filter(step -> step * scale >= APART)
        .findFirst()
        .orElse(STEPS.getLast() * single);
  }

  double right() {
    return x(plan.width());
  }

  double bottom() {
    return y(plan.bottom());
  }
}
