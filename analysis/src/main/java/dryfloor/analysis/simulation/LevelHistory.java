package dryfloor.analysis.simulation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Levels over time, kept only at the moments between which a straight line would tell otherwise: no
 * level that was ever taken down lies farther than {@link #TOLERANCE} from the lines between the
 * kept ones. A pump that cycles for days then costs a few moments for each cycle.
 *
 * <p>For each place the slopes are remembered that still pass all moments since the last kept one
 * closely enough; when none is left for some place, the moment before is kept. The first and the
 * last moment always are.
 */
final class LevelHistory {

  /** How far a line between kept moments may lie from a level in between (m). */
  private static final double TOLERANCE = 5e-5;

  private final int[] places;
  private final List<Double> times = new ArrayList<>();
  private final List<double[]> levels = new ArrayList<>();

  // The moment taken down last, which is kept only if the next one needs it.
  private double lastTime;
  private double[] last;
  private boolean lastIsKept = true;

  // Slopes of the lines from the last kept moment that pass all since then closely enough (m/s).
  private final double[] leastSlope;
  private final double[] greatestSlope;

  /** Keeps the levels of these places. */
  LevelHistory(int[] places) {
    this.places = places.clone();
    last = new double[places.length];
    leastSlope = new double[places.length];
    greatestSlope = new double[places.length];
  }

  /** Takes down the levels of all places (m) at a moment (s), no earlier than the last one. */
  void add(double time, double[] all) {
    if (times.isEmpty()) {
      read(time, all);
      keepLast();
      return;
    }
    if (time > keptTime() && !lineReaches(time, all)) {
      keepLast();
      lineReaches(time, all);
    }
    read(time, all);
    lastIsKept = false;
  }

  private void read(double time, double[] all) {
    lastTime = time;
    for (int column = 0; column < places.length; column++) {
      last[column] = all[places[column]];
    }
  }

  private void keepLast() {
    times.add(lastTime);
    levels.add(last.clone());
    lastIsKept = true;
    Arrays.fill(leastSlope, Double.NEGATIVE_INFINITY);
    Arrays.fill(greatestSlope, Double.POSITIVE_INFINITY);
  }

  private double keptTime() {
    return times.getLast();
  }

  /**
   * Narrows the slopes to this moment; returns whether each place still has one that reaches it.
   */
  private boolean lineReaches(double time, double[] all) {
    double span = time - keptTime();
    if (span <= 0) {
      return true;
    }
    double[] kept = levels.getLast();
    boolean reaches = true;
    for (int column = 0; column < places.length && reaches; column++) {
      double rise = all[places[column]] - kept[column];
      double slope = rise / span;
      reaches = slope >= leastSlope[column] && slope <= greatestSlope[column];
      leastSlope[column] = Math.max(leastSlope[column], (rise - TOLERANCE) / span);
      greatestSlope[column] = Math.min(greatestSlope[column], (rise + TOLERANCE) / span);
    }
    return reaches;
  }

  /** Times of the kept moments (s). */
  double[] times() {
    keepLastIfNeeded();
    return times.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** Levels at the kept moments (m): one row for each moment, in the order of the places. */
  double[][] levels() {
    keepLastIfNeeded();
    return levels.toArray(new double[0][]);
  }

  /** How much each level has changed since a time (m), in the order of the places. */
  double[] changesSince(double time) {
    keepLastIfNeeded();
    int after = times.size() - 1;
    while (after > 1 && times.get(after - 1) > time) {
      after--;
    }
    double[] changes = new double[places.length];
    if (after > 0) {
      double start = times.get(after - 1);
      double share = Math.clamp((time - start) / (times.get(after) - start), 0, 1);
      for (int column = 0; column < changes.length; column++) {
        double then =
            levels.get(after - 1)[column] * (1 - share) + levels.get(after)[column] * share;
        changes[column] = levels.getLast()[column] - then;
      }
    }
    return changes;
  }

  private void keepLastIfNeeded() {
    if (!lastIsKept) {
      keepLast();
    }
  }
}
