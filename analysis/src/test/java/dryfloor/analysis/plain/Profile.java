package dryfloor.analysis.plain;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** How high a pipe lies, straight between points, and the water that stands in it. */
final class Profile {

  /** What lies level fills and drains within this above its elevation (m). */
  private static final double LEVEL = 1e-3;

  private final List<Point> points;
  private final double boreArea;
  private final Table table;
  private final double top;

  Profile(List<Point> points, double boreArea) {
    this.points = points;
    this.boreArea = boreArea;
    this.table =
        Table.of(
            IntStream.range(1, points.size())
                .boxed()
                .flatMapToDouble(i -> DoubleStream.of(low(i), full(i))),
            this::sumBelow);
    this.top = IntStream.range(1, points.size()).mapToDouble(this::full).max().orElseThrow();
  }

  double boreArea() {
    return boreArea;
  }

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
    return table.volumeBelow(Math.min(level, top));
  }

  /** Elevation up to which so much water stands. */
  double levelOf(double volume) {
    return table.levelOf(Math.min(volume, volume()));
  }

  private double sumBelow(double level) {
    double length = 0;
    for (int i = 1; i < points.size(); i++) {
      double share = Math.clamp((level - low(i)) / (full(i) - low(i)), 0, 1);
      length += share * (points.get(i).along() - points.get(i - 1).along());
    }
    return length * boreArea;
  }

  /** Where the piece before a point begins to fill (m). */
  private double low(int i) {
    return Math.min(points.get(i - 1).elevation(), points.get(i).elevation());
  }

  /** Where it is full (m). */
  private double full(int i) {
    double high = Math.max(points.get(i - 1).elevation(), points.get(i).elevation());
    return Math.max(high, low(i) + LEVEL);
  }
}
