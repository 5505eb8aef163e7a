package dryfloor.analysis.network;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;

/**
 * Where the two legs of a pipe lie: from each end to the highest point.
 *
 * <p>The water that stands in a leg fills it from its end upwards by elevation; what lies below the
 * end (a sag) stays in the pipe whatever happens. Between two crests of one leg the lower one is
 * passed over: air that would be caught under it is left out.
 */
public final class LegProfile {

  /** A level stretch of pipe fills over this height (m). */
  public static final double LEVEL_STRETCH = 1e-3;

  /** Share of the bore that a leg under pressure seems to hold above its crest. */
  private static final double PRESSED = 1;

  private final List<RunPiece.Point> points;
  private final int crest;
  private final double area;

  LegProfile(List<RunPiece.Point> points, double area) {
    this.points = points;
    this.area = area;
    int highest = 0;
    for (int i = 1; i < points.size(); i++) {
      if (points.get(i).elevation() > points.get(highest).elevation()) {
        highest = i;
      }
    }
    this.crest = highest;
  }

  double crest() {
    return points.get(crest).elevation();
  }

  double crestAlong() {
    return points.get(crest).along();
  }

  /** Water that the leg on this side holds when full (m³). */
  double volume(int side) {
    double length =
        side == 0
            ? points.get(crest).along()
            : points.getLast().along() - points.get(crest).along();
    return length * area;
  }

  /** Level and volume of the water that stands in the leg on this side. */
  LevelTable table(int side) {
    double end = (side == 0 ? points.getFirst() : points.getLast()).elevation();
    NavigableSet<Double> cuts = new TreeSet<>(List.of(end, crest()));
    for (int i = first(side); i <= last(side); i++) {
      double elevation = points.get(i).elevation();
      if (elevation > end) {
        cuts.add(elevation);
        cuts.add(Math.min(elevation + LEVEL_STRETCH, crest()));
      }
    }
    cuts.add(Math.min(end + LEVEL_STRETCH, crest()));
    if (crest() - end < LEVEL_STRETCH) {
      cuts.add(end + LEVEL_STRETCH);
    }
    List<Double> elevations = distinct(cuts);
    double[] y = new double[elevations.size() + 1];
    double[] v = new double[y.length];
    for (int i = 0; i < elevations.size(); i++) {
      y[i] = elevations.get(i);
      // A sliver of slope keeps the table rising where the leg runs level or has no length.
      v[i] = volumeBelow(side, y[i]) + (y[i] - y[0]) * 1e-9;
    }
    // Above the crest stands no water: what lies there is the pressure line of a leg that is full.
    int last = y.length - 1;
    y[last] = y[last - 1] + 1;
    v[last] = v[last - 1] + area * PRESSED;
    return LevelTable.of(y, v);
  }

  private static List<Double> distinct(NavigableSet<Double> cuts) {
    List<Double> kept = new ArrayList<>();
    for (double cut : cuts) {
      if (kept.isEmpty() || cut - kept.getLast() > 1e-9) {
        kept.add(cut);
      }
    }
    return kept;
  }

  private int first(int side) {
    return side == 0 ? 0 : crest;
  }

  private int last(int side) {
    return side == 0 ? crest : points.size() - 1;
  }

  private double volumeBelow(int side, double elevation) {
    double volume = 0;
    for (int i = first(side); i < last(side); i++) {
      RunPiece.Point a = points.get(i);
      RunPiece.Point b = points.get(i + 1);
      double low = Math.min(a.elevation(), b.elevation());
      double high = Math.max(Math.max(a.elevation(), b.elevation()), low + LEVEL_STRETCH);
      double share = Math.clamp((elevation - low) / (high - low), 0, 1);
      volume += share * (b.along() - a.along()) * area;
    }
    return volume;
  }
}
