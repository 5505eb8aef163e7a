package dryfloor.analysis.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** What holds for every pump, however oddly its maker drew the curve. */
class PumpCurveShapeTest {

  @Provide
  Arbitrary<PumpCurve> oddCurves() {
    return curves(1e-5, 0.01, 0.001, 10.0);
  }

  @Provide
  Arbitrary<PumpCurve> usualCurves() {
    return curves(1e-3, 0.01, 0.1, 10.0);
  }

  /** Curves of one to six stretches whose widths and drops lie between the limits. */
  private static Arbitrary<PumpCurve> curves(
      double narrow, double wide, double gentle, double steep) {
    return Arbitraries.integers()
        .between(1, 6)
        .flatMap(
            stretches ->
                Combinators.combine(
                        lengths(narrow, wide, stretches), lengths(gentle, steep, stretches))
                    .as(PumpCurveShapeTest::curve));
  }

  private static Arbitrary<double[]> lengths(double least, double most, int count) {
    return Arbitraries.doubles()
        .between(least, most)
        .ofScale(6)
        .array(double[].class)
        .ofSize(count);
  }

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
  void headFallsStrictlyEverywhere(@ForAll("oddCurves") PumpCurve curve) {
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
  void runOutFlowIsWhereTheHeadIsGone(@ForAll("oddCurves") PumpCurve curve) {
    assertThat(curve.head(curve.runOutFlow())).isCloseTo(0.0, within(1e-9));
    assertThat(curve.shutOffHead()).isEqualTo(curve.head(0.0));
  }

  @Property(tries = 1000)
  void slopeIsThatOfTheHead(
      @ForAll("usualCurves") PumpCurve curve,
      @ForAll @Scale(6) @DoubleRange(min = -1, max = 3) double share) {
    double flow = share * curve.runOutFlow();
    double step = 1e-9;
    double difference = curve.head(flow + step) - curve.head(flow - step);
    double slope = curve.headPerFlow(flow);
    assertThat(slope).isCloseTo(difference / (2.0 * step), within(1e-4 * Math.abs(slope) + 1e-2));
  }
}
