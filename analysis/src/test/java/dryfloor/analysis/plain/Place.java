package dryfloor.analysis.plain;

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
  private final Table table;
  double volume;
  private double knownVolume = -1;
  private double knownLevel;

  private Place(String id, Kind kind, double bottom, Table table) {
    super(id);
    this.kind = kind;
    this.bottom = bottom;
    this.table = table;
  }

  /**
   * A place with a bottom and the volume below each elevation, taken at every millimetre and where
   * its outline jumps.
   */
  static Place inside(
      String id, Kind kind, double bottom, DoubleStream jumps, DoubleUnaryOperator volumeBelow) {
    DoubleStream elevations =
        DoubleStream.concat(
            IntStream.rangeClosed(0, MILLIMETRES).mapToDouble(i -> bottom + i * 1e-3),
            jumps.filter(z -> z > bottom && z < bottom + MILLIMETRES * 1e-3));
    return new Place(id, kind, bottom, Table.of(elevations, volumeBelow));
  }

  /** An endless place whose level never changes. */
  static Place outside(String id, double level) {
    return new Place(id, Kind.OUTSIDE, level, Table.of(DoubleStream.of(level), elevation -> 0));
  }

  double volumeAt(double elevation) {
    return table.volumeBelow(elevation);
  }

  @Override
  double level() {
    if (kind == Kind.OUTSIDE) {
      return bottom;
    }
    if (volume != knownVolume) {
      knownVolume = volume;
      knownLevel = table.levelOf(volume);
    }
    return knownLevel;
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
