package dryfloor.analysis.plain;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;

/** Volumes below elevations, straight between neighbours and on above the last (m, m³). */
final class Table {

  private final double[] elevations;
  private final double[] volumes;

  private Table(double[] elevations, double[] volumes) {
    this.elevations = elevations;
    this.volumes = volumes;
  }

  /** The volume below each of these elevations, in any order. */
  static Table of(DoubleStream elevations, DoubleUnaryOperator volumeBelow) {
    double[] sorted = elevations.sorted().distinct().toArray();
    return new Table(sorted, DoubleStream.of(sorted).map(volumeBelow).toArray());
  }

  /** The water below an elevation (m³). */
  double volumeBelow(double elevation) {
    return elevation <= elevations[0] ? volumes[0] : between(elevation, elevations, volumes);
  }

  /** The lowest elevation up to which so much water stands (m). */
  double levelOf(double volume) {
    return volume <= volumes[0] ? elevations[0] : between(volume, volumes, elevations);
  }

  private static double between(double at, double[] from, double[] to) {
    int found = Arrays.binarySearch(from, at);
    int upper = Math.clamp(found >= 0 ? found : -found - 1, 1, from.length - 1);
    double width = from[upper] - from[upper - 1];
    double share = width > 0 ? (at - from[upper - 1]) / width : 0;
    return to[upper - 1] + share * (to[upper] - to[upper - 1]);
  }
}
