package dryfloor.analysis.plain;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** What holds water: a vessel, a basin, a floor, or the endless outside. */
final class Place extends Node {

  /** What kind of place, for the verdict. */
  enum Kind {
    VESSEL,
    BASIN,
    FLOOR,
    OUTSIDE
  }

  /** Depth of the table; above it the outline goes straight up. */
  private static final int MILLIMETRES = 4000;

  final Kind kind;
  final double bottom;
  private final double[] elevations;
  private final double[] volumes;
  private final double outsideLevel;
  double volume;
  private double knownVolume = -1;
  private double knownLevel;

  private Place(
      String id, Kind kind, double bottom, double[] elevations, double[] volumes, double outside) {
    super(id);
    this.kind = kind;
    this.bottom = bottom;
    this.elevations = elevations;
    this.volumes = volumes;
    this.outsideLevel = outside;
  }

  /**
   * A place with a bottom and the volume below each elevation, taken at every millimetre and where
   * its outline jumps.
   */
  static Place inside(
      String id, Kind kind, double bottom, DoubleStream jumps, DoubleUnaryOperator volumeBelow) {
    double[] elevations =
        DoubleStream.concat(
                IntStream.rangeClosed(0, MILLIMETRES).mapToDouble(i -> bottom + i * 1e-3),
                jumps.filter(z -> z > bottom && z < bottom + MILLIMETRES * 1e-3))
            .sorted()
            .distinct()
            .toArray();
    double[] volumes = DoubleStream.of(elevations).map(volumeBelow).toArray();
    return new Place(id, kind, bottom, elevations, volumes, 0);
  }

  /** An endless place whose level never changes. */
  static Place outside(String id, double level) {
    return new Place(id, Kind.OUTSIDE, level, new double[0], new double[0], level);
  }

  double volumeAt(double elevation) {
    return elevation <= bottom ? 0 : between(elevation, elevations, volumes);
  }

  @Override
  double level() {
    if (kind == Kind.OUTSIDE) {
      return outsideLevel;
    }
    if (volume != knownVolume) {
      knownVolume = volume;
      knownLevel = volume <= 0 ? bottom : between(volume, volumes, elevations);
    }
    return knownLevel;
  }

  /** Straight between neighbours, and on above the last. */
  private static double between(double at, double[] from, double[] to) {
    int found = Arrays.binarySearch(from, at);
    int upper = Math.clamp(found >= 0 ? found : -found - 1, 1, from.length - 1);
    double share = (at - from[upper - 1]) / (from[upper] - from[upper - 1]);
    return to[upper - 1] + share * (to[upper] - to[upper - 1]);
  }

  /** Surface at the present level (m²). */
  double area() {
    if (kind == Kind.OUTSIDE) {
      return 1e9;
    }
    double level = level();
    return Math.max(1e-6, (volumeAt(level + 1e-4) - volumeAt(level)) / 1e-4);
  }
}
