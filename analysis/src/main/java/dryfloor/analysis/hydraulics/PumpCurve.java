package dryfloor.analysis.hydraulics;

import java.util.Arrays;

/**
 * Head of a running pump over its flow, strictly falling for every flow between minus and plus
 * infinity.
 *
 * <p>Between the maker's points: the monotone piecewise cubic of Fritsch and Carlson, SIAM Journal
 * on Numerical Analysis 17 (1980) 238–246, with the weighted harmonic mean of Fritsch and Butland,
 * SIAM Journal on Scientific and Statistical Computing 5 (1984) 300–304, for the slopes (both from
 * memory). No slope at a point is flatter than a thousandth of its steeper neighbour or steeper
 * than 2.5 times the gentler one, so that the cubic never runs level. Two points give a straight
 * line.
 *
 * <p>Beyond the points nothing is published for a pump at large; the tangent goes on, and
 *
 * <ul>
 *   <li>below zero flow, water driven back through the running pump, shut-off head · (Q/Qn)² comes
 *       on top, Qn being the flow of the last point;
 *   <li>beyond the last point the same parabola is taken off, so that the head soon becomes
 *       negative: the pump is then a passage that costs head.
 * </ul>
 */
public final class PumpCurve {

  private static final double FLATTEST_OF_STEEPER = 1e-3;
  private static final double STEEPEST_OF_GENTLER = 2.5;

  private final double[] flows;
  private final double[] heads;
  private final double[] slopes;
  private final double bend;

  private PumpCurve(double[] flows, double[] heads) {
    this.flows = flows;
    this.heads = heads;
    this.slopes = slopes(flows, heads);
    double shutOff = heads[0] - slopes[0] * flows[0];
    double last = flows[flows.length - 1];
    this.bend = shutOff / (last * last);
  }

  /**
   * The curve through a maker's points.
   *
   * @param flows m³/s, two or more, 0 or more, strictly rising
   * @param heads m, as many, strictly falling, the last 0 or more
   * @throws IllegalArgumentException if the points are none of that; it says which and what would
   *     be right
   */
  public static PumpCurve through(double[] flows, double[] heads) {
    if (flows.length != heads.length || flows.length < 2) {
      throw new IllegalArgumentException(
          "Pump curve: "
              + flows.length
              + " flows and "
              + heads.length
              + " heads; give two or more points, each with a flow and a head");
    }
    for (int i = 0; i < flows.length; i++) {
      requirePoint(i, flows, heads);
    }
    return new PumpCurve(flows.clone(), heads.clone());
  }

  private static void requirePoint(int i, double[] flows, double[] heads) {
    if (!(flows[i] >= 0.0 && flows[i] < Double.POSITIVE_INFINITY)
        || !(heads[i] >= 0.0 && heads[i] < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          point(i, flows, heads) + " is no point of a pump curve; flow and head must be 0 or more");
    }
    if (i > 0 && !(flows[i] > flows[i - 1])) {
      throw new IllegalArgumentException(
          point(i, flows, heads) + " has no more flow than the point before; order them by flow");
    }
    if (i > 0 && !(heads[i] < heads[i - 1])) {
      throw new IllegalArgumentException(
          point(i, flows, heads)
              + " has no less head than the point before; head must fall as flow rises");
    }
  }

  private static String point(int i, double[] flows, double[] heads) {
    return "Pump curve: point " + (i + 1) + " (" + flows[i] + " m3/s, " + heads[i] + " m)";
  }

  /**
   * The same pump at another speed, by the affinity laws (any handbook): flow goes with speed, head
   * with its square.
   *
   * @param fraction of the speed of this curve, above 0; below about a half the laws are less sure
   * @throws IllegalArgumentException if the fraction is not above 0: a stopped pump has no curve
   */
  public PumpCurve atSpeed(double fraction) {
    requireFraction("speed", fraction);
    return new PumpCurve(scaled(flows, fraction), scaled(heads, fraction * fraction));
  }

  /**
   * The same pump, worn or clogged, that gives this fraction of the flow at every head.
   *
   * @param fraction of the flow of this curve, above 0
   * @throws IllegalArgumentException if the fraction is not above 0: a blocked pump has no curve
   */
  public PumpCurve withFlowScaled(double fraction) {
    requireFraction("flow", fraction);
    return new PumpCurve(scaled(flows, fraction), heads);
  }

  /**
   * Head that the running pump adds, m.
   *
   * @param flow m³/s, any; below 0 is backward
   */
  public double head(double flow) {
    int last = flows.length - 1;
    if (flow < flows[0]) {
      double back = Math.min(0.0, flow);
      return heads[0] + slopes[0] * (flow - flows[0]) + bend * back * back;
    }
    if (flow >= flows[last]) {
      double beyond = flow - flows[last];
      return heads[last] + beyond * (slopes[last] - bend * beyond);
    }
    int i = segmentOf(flow);
    double width = flows[i + 1] - flows[i];
    double t = (flow - flows[i]) / width;
    double rise = heads[i + 1] - heads[i];
    double start = slopes[i] * width - rise;
    double end = rise - slopes[i + 1] * width;
    return heads[i] + t * rise + t * (1.0 - t) * ((1.0 - t) * start + t * end);
  }

  /**
   * The exact slope of {@link #head}: d head / d flow, s/m², always below 0.
   *
   * @param flow m³/s, any
   */
  public double headPerFlow(double flow) {
    int last = flows.length - 1;
    if (flow < flows[0]) {
      return slopes[0] + 2.0 * bend * Math.min(0.0, flow);
    }
    if (flow >= flows[last]) {
      return slopes[last] - 2.0 * bend * (flow - flows[last]);
    }
    int i = segmentOf(flow);
    double width = flows[i + 1] - flows[i];
    double t = (flow - flows[i]) / width;
    double secant = (heads[i + 1] - heads[i]) / width;
    return slopes[i] * (1.0 - t) * (1.0 - 3.0 * t)
        + slopes[i + 1] * t * (3.0 * t - 2.0)
        + 6.0 * t * (1.0 - t) * secant;
  }

  /** Head at no flow, m. */
  public double shutOffHead() {
    return head(0.0);
  }

  /** Flow at no head, m³/s. */
  public double runOutFlow() {
    int last = flows.length - 1;
    double slope = -slopes[last];
    double root = Math.sqrt(slope * slope + 4.0 * bend * heads[last]);
    return flows[last] + 2.0 * heads[last] / (slope + root);
  }

  /** Makers give a handful of points, so walking along them is quicker than halving. */
  private int segmentOf(double flow) {
    int i = 0;
    while (flow >= flows[i + 1]) {
      i++;
    }
    return i;
  }

  private static double[] slopes(double[] flows, double[] heads) {
    int last = flows.length - 1;
    double[] slopes = new double[last + 1];
    for (int i = 1; i < last; i++) {
      slopes[i] =
          weightedHarmonicMean(
              flows[i] - flows[i - 1],
              secant(flows, heads, i - 1),
              flows[i + 1] - flows[i],
              secant(flows, heads, i));
    }
    slopes[0] = endSlope(secant(flows, heads, 0), slopes[Math.min(1, last - 1)], last);
    slopes[last] = endSlope(secant(flows, heads, last - 1), slopes[Math.max(1, last - 1)], last);
    return slopes;
  }

  private static double secant(double[] flows, double[] heads, int i) {
    return (heads[i + 1] - heads[i]) / (flows[i + 1] - flows[i]);
  }

  private static double weightedHarmonicMean(
      double widthBefore, double before, double widthAfter, double after) {
    double weightBefore = widthBefore + 2.0 * widthAfter;
    double weightAfter = 2.0 * widthBefore + widthAfter;
    double mean = (weightBefore + weightAfter) / (weightBefore / before + weightAfter / after);
    return bounded(mean, Math.min(before, after), Math.max(before, after));
  }

  /** At an end the slope is such that the stretch is a parabola, as near as the bounds allow. */
  private static double endSlope(double secant, double inner, int stretches) {
    return stretches == 1 ? secant : bounded(2.0 * secant - inner, secant, secant);
  }

  private static double bounded(double slope, double steeper, double gentler) {
    return Math.max(STEEPEST_OF_GENTLER * gentler, Math.min(FLATTEST_OF_STEEPER * steeper, slope));
  }

  private static double[] scaled(double[] values, double factor) {
    return Arrays.stream(values).map(value -> factor * value).toArray();
  }

  private static void requireFraction(String what, double fraction) {
    if (!(fraction > 0.0 && fraction < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "Pump curve: fraction of " + what + " is " + fraction + "; it must be above 0");
    }
  }
}
