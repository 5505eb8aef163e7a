package dryfloor.analysis.network;

import dryfloor.model.element.Floor;
import dryfloor.model.element.Vessel;
import dryfloor.model.shape.Shape;
import java.util.Arrays;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * Level and volume of a body of water, straight between its points and continued with the last
 * slice's area above them (m of elevation, m³).
 *
 * <p>Exact for upright walls and for measured tables. A frustum is cut into slices of {@value
 * #SLICE} m, which keeps its level within 0.01 mm.
 */
public final class LevelTable {

  private static final double SLICE = 0.002;

  /** Two points closer than this are one (m). */
  private static final double SAME = 1e-9;

  private final double[] elevations;
  private final double[] volumes;

  private LevelTable(double[] elevations, double[] volumes) {
    this.elevations = elevations;
    this.volumes = volumes;
  }

  /** Upright walls of one area (m²) from an elevation upwards. */
  public static LevelTable upright(double bottom, double area) {
    return new LevelTable(new double[] {bottom, bottom + 1}, new double[] {0, area});
  }

  /**
   * A floor beside vessels whose walls are gone: what stands within their outlines stands at the
   * level of the floor, but is counted with them, and the room under it is there only once. Where
   * they would leave no floor at all, its area can only have been meant to lie beside them.
   */
  static LevelTable floor(Floor floor, List<Vessel> fallenApart) {
    NavigableSet<Double> cuts = new TreeSet<>();
    cuts.add(floor.elevation());
    fallenApart.forEach(vessel -> addCuts(vessel, cuts));
    cuts.headSet(floor.elevation()).clear();
    cuts.add(cuts.last() + 1);
    double[] elevations = withoutTwins(cuts);
    double[] volumes =
        Arrays.stream(elevations).map(y -> besideOnFloor(floor, fallenApart, y)).toArray();
    LevelTable beside = new LevelTable(elevations, volumes);
    boolean isRoom =
        IntStream.range(0, elevations.length - 1)
            .allMatch(i -> beside.area(i) > 0.05 * floor.area());
    return isRoom ? beside : upright(floor.elevation(), floor.area());
  }

  private static double besideOnFloor(Floor floor, List<Vessel> fallenApart, double elevation) {
    double volume = floor.area() * (elevation - floor.elevation());
    for (Vessel vessel : fallenApart) {
      Shape shape = vessel.shape();
      volume -= shape.volumeBelow(elevation - vessel.bottom());
      volume += shape.volumeBelow(floor.elevation() - vessel.bottom());
    }
    return volume;
  }

  /** Any rising points. */
  static LevelTable of(double[] elevations, double[] volumes) {
    return new LevelTable(elevations.clone(), volumes.clone());
  }

  /**
   * The inside of a vessel less its contents and less the outsides of the vessels that stand in it.
   */
  static LevelTable of(Vessel vessel, List<Vessel> standingInIt) {
    NavigableSet<Double> cuts = new TreeSet<>();
    addCuts(vessel, cuts);
    standingInIt.forEach(inner -> addCuts(inner, cuts));
    cuts.headSet(vessel.bottom() - SAME).clear();
    double top = vessel.rim() + 1;
    cuts.tailSet(vessel.rim() + SAME).clear();
    cuts.add(top);
    double[] elevations = withoutTwins(cuts);
    double[] volumes =
        Arrays.stream(elevations).map(y -> netVolumeBelow(vessel, standingInIt, y)).toArray();
    return new LevelTable(elevations, volumes);
  }

  private static void addCuts(Vessel vessel, NavigableSet<Double> cuts) {
    cuts.add(vessel.bottom());
    cuts.add(vessel.rim());
    for (Vessel.Displacement content : vessel.contents()) {
      cuts.add(vessel.bottom() + content.from());
      cuts.add(vessel.bottom() + content.to());
    }
    switch (vessel.shape()) {
      case Shape.Box box -> {}
      case Shape.Cylinder cylinder -> {}
      case Shape.Prism prism -> {}
      case Shape.Measured measured ->
          measured.points().forEach(point -> cuts.add(vessel.bottom() + point.depth()));
      case Shape.Frustum frustum -> {
        int slices = (int) Math.ceil(frustum.height() / SLICE);
        for (int i = 1; i < slices; i++) {
          cuts.add(vessel.bottom() + frustum.height() * i / slices);
        }
      }
    }
  }

  private static double[] withoutTwins(NavigableSet<Double> cuts) {
    double[] kept = new double[cuts.size()];
    int count = 0;
    for (double cut : cuts) {
      if (count == 0 || cut - kept[count - 1] > SAME) {
        kept[count++] = cut;
      }
    }
    return Arrays.copyOf(kept, count);
  }

  private static double netVolumeBelow(Vessel vessel, List<Vessel> standingInIt, double elevation) {
    double depth = elevation - vessel.bottom();
    double volume = vessel.shape().volumeBelow(depth);
    for (Vessel.Displacement content : vessel.contents()) {
      volume -= content.volumeBelow(depth);
    }
    for (Vessel inner : standingInIt) {
      volume -= inner.shape().volumeBelow(elevation - inner.bottom());
    }
    return volume;
  }

  /** Elevation of the surface (m) of this much water (m³). */
  public double level(double volume) {
    return level(slice(volume), volume);
  }

  /** The slice of the table in which this much water (m³) ends, for those who ask for more. */
  public int slice(double volume) {
    return slice(volumes, volume);
  }

  /** Elevation of the surface (m) of this much water (m³), which ends in this slice. */
  public double level(int slice, double volume) {
    return elevations[slice] + (volume - volumes[slice]) / area(slice);
  }

  /** Plan area (m²) in a slice. */
  public double area(int slice) {
    return (volumes[slice + 1] - volumes[slice]) / (elevations[slice + 1] - elevations[slice]);
  }

  /** Plan area of the surface (m²) at this much water (m³). */
  public double areaAtVolume(double volume) {
    return area(slice(volumes, volume));
  }

  /** Water (m³) up to this elevation (m). */
  public double volume(double elevation) {
    int slice = slice(elevations, elevation);
    return volumes[slice] + (elevation - elevations[slice]) * area(slice);
  }

  /** Elevation of the lowest point (m). */
  public double bottom() {
    return elevations[0];
  }

  private static int slice(double[] bounds, double value) {
    if (bounds.length == 2 || value < bounds[1]) {
      return 0;
    }
    int low = 1;
    int high = bounds.length - 1;
    while (high - low > 1) {
      int middle = (low + high) >>> 1;
      if (value < bounds[middle]) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return low;
  }
}
