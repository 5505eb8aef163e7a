package dryfloor.analysis.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;

/** What holds for every pump, however oddly its maker drew the curve. */
class PumpCurveProperties {

  /** A curve whose stretches are as wide and as steep as the two lists say. */
  private static PumpCurve curve(double[] widths, double[] drops) {
    double[] flows = new double[widths.length + 1];
    double[] heads = new double[widths.length + 1];
    heads[widths.length] = 0.5;
    for (int i = 0; i < widths.length; i++) {
      flows[i + 1] = flows[i] + widths[i];
      heads[widths.length - 1 - i] = heads[widths.length - i] + drops[i];
    }
    return PumpCurve.through(flows, heads);
  }

  @Property(tries = 300)
  void headFallsStrictlyEverywhere(
      @ForAll @Size(5) double @Scale(6) @DoubleRange(min = 1e-5, max = 0.01) [] widths,
      @ForAll @Size(5) double @Scale(6) @DoubleRange(min = 0.001, max = 10) [] drops) {
    PumpCurve curve = curve(widths, drops);
    double reach = curve.runOutFlow();
    double before = Double.POSITIVE_INFINITY;
    for (int i = -500; i <= 2000; i++) {
      double flow = i * reach / 1000.0;
      assertThat(curve.head(flow)).isLessThan(before);
      assertThat(curve.headPerFlow(flow)).isNegative();
      before = curve.head(flow);
    }
  }

  @Property(tries = 300)
  void runOutFlowIsWhereTheHeadIsGone(
      @ForAll @Size(4) double @Scale(6) @DoubleRange(min = 1e-5, max = 0.01) [] widths,
      @ForAll @Size(4) double @Scale(6) @DoubleRange(min = 0.001, max = 10) [] drops) {
    PumpCurve curve = curve(widths, drops);
    assertThat(curve.head(curve.runOutFlow())).isCloseTo(0.0, within(1e-9));
    assertThat(curve.shutOffHead()).isEqualTo(curve.head(0.0));
  }

  @Property(tries = 300)
  void slopeIsThatOfTheHead(
      @ForAll @Size(3) double @Scale(6) @DoubleRange(min = 1e-3, max = 0.01) [] widths,
      @ForAll @Size(3) double @Scale(6) @DoubleRange(min = 0.1, max = 10) [] drops,
      @ForAll @Scale(6) @DoubleRange(min = -1, max = 3) double share) {
    PumpCurve curve = curve(widths, drops);
    double flow = share * curve.runOutFlow();
    double step = 1e-9;
    double difference = curve.head(flow + step) - curve.head(flow - step);
    double slope = curve.headPerFlow(flow);
    assertThat(slope).isCloseTo(difference / (2.0 * step), within(1e-3 * Math.abs(slope) + 1e-2));
  }
}
