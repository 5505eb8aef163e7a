package dryfloor.analysis.plain;

import java.util.ArrayList;
import java.util.List;

/** How high a pipe lies, straight between points, and the water that stands in it. */
record Profile(List<Point> points, double boreArea) {

  /** What lies level fills and drains within this above its elevation (m). */
  private static final double LEVEL = 1e-3;

  /** A place on the pipe (m along it, m of elevation). */
  record Point(double along, double elevation) {}

  double first() {
    return points.getFirst().along();
  }

  double last() {
    return points.getLast().along();
  }

  double elevationAt(double along) {
    for (int i = 1; i < points.size(); i++) {
      Point before = points.get(i - 1);
      Point after = points.get(i);
      if (along <= after.along() && after.along() > before.along()) {
        double share = Math.max(0, (along - before.along()) / (after.along() - before.along()));
        return before.elevation() + share * (after.elevation() - before.elevation());
      }
    }
    return points.getLast().elevation();
  }

  /** The highest point; the first of several. */
  Point crest() {
    Point highest = points.getFirst();
    for (Point point : points) {
      if (point.elevation() > highest.elevation() + 1e-9) {
        highest = point;
      }
    }
    return highest;
  }

  /** The piece between two places (m along). */
  Profile between(double from, double to, boolean keepEnds) {
    List<Point> inside = new ArrayList<>();
    inside.add(new Point(from, keepEnds ? points.getFirst().elevation() : elevationAt(from)));
    points.stream()
        .filter(point -> point.along() > from && point.along() < to)
        .forEach(inside::add);
    inside.add(new Point(to, elevationAt(to)));
    return new Profile(List.copyOf(inside), boreArea);
  }

  boolean isLevel() {
    return points.stream().mapToDouble(Point::elevation).min().orElseThrow()
        > crest().elevation() - 1e-6;
  }

  double volume() {
    return (last() - first()) * boreArea;
  }

  /** Water in the pipe below an elevation (m³). */
  double volumeBelow(double level) {
    double length = 0;
    for (int i = 1; i < points.size(); i++) {
      double low = Math.min(points.get(i - 1).elevation(), points.get(i).elevation());
      double high = Math.max(points.get(i - 1).elevation(), points.get(i).elevation());
      double share = Math.clamp((level - low) / Math.max(high - low, LEVEL), 0, 1);
      length += share * (points.get(i).along() - points.get(i - 1).along());
    }
    return length * boreArea;
  }

  /** Elevation up to which so much water stands. */
  double levelOf(double volume) {
    double low = points.stream().mapToDouble(Point::elevation).min().orElseThrow();
    double high = crest().elevation() + LEVEL;
    return Laws.zero(z -> volume - volumeBelow(z), low, high);
  }
}
