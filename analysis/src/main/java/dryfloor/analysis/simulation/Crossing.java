package dryfloor.analysis.simulation;

import java.util.function.DoubleUnaryOperator;

/**
 * Volumes between the two ends of a step: the cubic that has the right volumes and gains at both
 * (Hermite). Used to find when something happened in the step.
 */
final class Crossing {

  /** The search may fall behind one that halves, and no further than by this. */
  private static final double SLACK = 4;

  private final double[] before;
  private final double[] gainsBefore;
  private final double[] after;
  private final double[] gainsAfter;
  private final double h;

  Crossing(double[] before, double[] gainsBefore, double[] after, double[] gainsAfter, double h) {
    this.before = before;
    this.gainsBefore = gainsBefore;
    this.after = after;
    this.gainsAfter = gainsAfter;
    this.h = h;
  }

  /** Volume of a place at a share of the step (m³). */
  double volume(int place, double share) {
    double rest = 1 - share;
    return rest * rest * ((1 + 2 * share) * before[place] + share * h * gainsBefore[place])
        + share * share * ((1 + 2 * rest) * after[place] - rest * h * gainsAfter[place]);
  }

  /** Volumes of all places at a share of the step (m³). */
  void volumes(double share, double[] into) {
    for (int place = 0; place < into.length; place++) {
      into[place] = volume(place, share);
    }
  }

  /**
   * The share of the step at which a gauge stops being above zero, to within a tolerance and never
   * before it.
   *
   * @param gauge above zero at 0 and not at 1
   * @param tolerance as a share of the step
   */
  static double find(
      DoubleUnaryOperator gauge, double gaugeBefore, double gaugeAfter, double tolerance) {
    double low = 0;
    double high = 1;
    double atLow = gaugeBefore;
    double atHigh = gaugeAfter;
    double widest = SLACK;
    while (high - low > tolerance) {
      double share = high - low > widest ? 0.5 : Math.clamp(atLow / (atLow - atHigh), 0.02, 0.98);
      widest /= 2;
      double middle = low + share * (high - low);
      double value = gauge.applyAsDouble(middle);
      if (value > 0) {
        low = middle;
        atLow = value;
        atHigh /= 2;
      } else {
        high = middle;
        atHigh = Math.min(value, -1e-300);
        atLow /= 2;
      }
    }
    return high;
  }
}
