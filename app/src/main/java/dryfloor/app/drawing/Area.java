package dryfloor.app.drawing;

/** An upright rectangle on paper (points). */
record Area(double left, double top, double right, double bottom) {

  boolean overlaps(Area other) {
    return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
  }

  /** Area in common with another (points²). */
  double common(Area other) {
    double width = Math.min(right, other.right) - Math.max(left, other.left);
    double height = Math.min(bottom, other.bottom) - Math.max(top, other.top);
    return Math.max(0, width) * Math.max(0, height);
  }

  boolean within(Area other) {
    return left >= other.left && right <= other.right && top >= other.top && bottom <= other.bottom;
  }

  Point middle() {
    return new Point((left + right) / 2, (top + bottom) / 2);
  }

  static Area around(Point one, Point other, double clearance) {
    return new Area(
        Math.min(one.x(), other.x()) - clearance,
        Math.min(one.y(), other.y()) - clearance,
        Math.max(one.x(), other.x()) + clearance,
        Math.max(one.y(), other.y()) + clearance);
  }
}
