package dryfloor.analysis.simulation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Levels over time, kept only at the moments between which a straight line would tell otherwise: no
 * figure that was ever taken down lies farther than {@link #TOLERANCE} from the lines between the
 * kept ones. A pump that cycles for days then costs a few moments for each cycle.
 *
 * <p>For each column the slopes are remembered that still pass all moments since the last kept one
 * closely enough; when none is left for some column, the moment before is kept. The first and the
 * last moment always are.
 */
final class LevelHistory {

  /** How far a line between kept moments may lie from a figure in between (m, or m³). */
  private static final double TOLERANCE = 5e-5;

  private final int columns;
  private final List<Double> times = new ArrayList<>();
  private final List<double[]> rows = new ArrayList<>();

  // The moment taken down last, which is kept only if the next one needs it.
  private double lastTime;
  private double[] last;
  private boolean lastIsKept = true;

  // Slopes of the lines from the last kept moment that pass all since then closely enough (m/s).
  private final double[] leastSlope;
  private final double[] greatestSlope;

  /** Keeps rows of so many figures. */
  LevelHistory(int columns) {
    this.columns = columns;
    last = new double[columns];
    leastSlope = new double[columns];
    greatestSlope = new double[columns];
  }

  /** Takes down a row at a moment (s), no earlier than the last one. */
  void add(double time, double[] row) {
    if (times.isEmpty()) {
      read(time, row);
      keepLast();
      return;
    }
    if (time > keptTime() && !lineReaches(time, row)) {
      keepLast();
      lineReaches(time, row);
    }
    read(time, row);
    lastIsKept = false;
  }

  private void read(double time, double[] row) {
    lastTime = time;
    System.arraycopy(row, 0, last, 0, columns);
  }

  private void keepLast() {
    times.add(lastTime);
    rows.add(last.clone());
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
  private boolean lineReaches(double time, double[] row) {
    double span = time - keptTime();
    if (span <= 0) {
      return true;
    }
    double[] kept = rows.getLast();
    boolean reaches = true;
    for (int column = 0; column < columns && reaches; column++) {
      double rise = row[column] - kept[column];
      double slope = rise / span;
      reaches = slope >= leastSlope[column] && slope <= greatestSlope[column];
      leastSlope[column] = Math.max(leastSlope[column], (rise - TOLERANCE) / span);
      greatestSlope[column] = Math.min(greatestSlope[column], (rise + TOLERANCE) / span);
    }
    return reaches;
  }

  /** How many moments are kept so far; the last one taken down may not be among them. */
  int keptSoFar() {
    return times.size();
  }

  /** How many moments are kept. */
  int moments() {
    keepLastIfNeeded();
    return times.size();
  }

  /** A kept moment (s). */
  double time(int moment) {
    return times.get(moment);
  }

  /** A figure of the row at a kept moment. */
  double value(int moment, int column) {
    return rows.get(moment)[column];
  }

  /** How much a figure has changed since a time (s). */
  double changeSince(double time, int column) {
    int after = moments() - 1;
    while (after > 1 && time(after - 1) > time) {
      after--;
    }
    if (after == 0) {
      return 0;
    }
    double share = Math.clamp((time - time(after - 1)) / (time(after) - time(after - 1)), 0, 1);
    double then = value(after - 1, column) * (1 - share) + value(after, column) * share;
    return value(moments() - 1, column) - then;
  }

  /** The greatest value of a figure at the moments kept since a time (s). */
  double highestSince(double time, int column) {
    double highest = Double.NEGATIVE_INFINITY;
    for (int moment = moments() - 1; moment >= 0 && time(moment) >= time; moment--) {
      highest = Math.max(highest, value(moment, column));
    }
    return highest;
  }

  private void keepLastIfNeeded() {
    if (!lastIsKept) {
      keepLast();
    }
  }
}
