package dryfloor.app.drawing;

/**
 * Puts the building on paper, one scale for width and height.
 *
 * @param plan of the building
 * @param scale points for each metre
 * @param left where the building's left end is (points)
 * @param top where its highest elevation is (points)
 */
record Paper(Plan plan, double scale, double left, double top) {

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

  double right() {
    return x(plan.width());
  }

  double bottom() {
    return y(plan.bottom());
  }
}
