package dryfloor.analysis.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class PipeLossTest {

  private static final double COLD_WATER = 1e-6;

  @Test
  void resistsAlsoAtRest() {
    assertThat(PipeLoss.head(0.0, 0.05, 10.0, 1e-6, 2.0, COLD_WATER)).isZero();
    double poiseuille =
        128.0 * COLD_WATER * 10.0 / (Math.PI * Physical.GRAVITY * Math.pow(0.05, 4));
    assertThat(PipeLoss.headPerFlow(0.0, 0.05, 10.0, 1e-6, 0.0, COLD_WATER))
        .isCloseTo(poiseuille, within(1e-12 * poiseuille));
    assertThat(PipeLoss.headPerFlow(0.0, 0.05, 0.0, 0.0, 2.0, COLD_WATER)).isPositive();
  }

  @Property(tries = 300)
  void losesMoreTheMoreFlowsOverTwelveDecades(
      @ForAll @Scale(6) @DoubleRange(min = 0.004, max = 0.3) double diameter,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 100) double length,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.05) double relativeRoughness,
      @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 50) double fittings) {
    double before = 0.0;
    for (double flow = 1e-12; flow < 1.0; flow *= 1.1) {
      double loss =
          PipeLoss.head(flow, diameter, length, relativeRoughness * diameter, fittings, COLD_WATER);
      assertThat(loss).isGreaterThan(before);
      before = loss;
    }
  }

  @Property(tries = 1000)
  void slopeIsThatOfTheLoss(
      @ForAll @Scale(6) @DoubleRange(min = -9, max = -1) double logFlow,
      @ForAll @Scale(6) @DoubleRange(min = 0.004, max = 0.3) double diameter,
      @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 100) double length,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.05) double relativeRoughness,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 50) double fittings) {
    double flow = Math.pow(10.0, logFlow);
    double roughness = relativeRoughness * diameter;
    double step = 1e-5 * flow;
    double difference =
        PipeLoss.head(flow + step, diameter, length, roughness, fittings, COLD_WATER)
            - PipeLoss.head(flow - step, diameter, length, roughness, fittings, COLD_WATER);
    double slope = PipeLoss.headPerFlow(flow, diameter, length, roughness, fittings, COLD_WATER);
    assertThat(slope).isPositive().isCloseTo(difference / (2.0 * step), within(1e-5 * slope));
  }

  @Property(tries = 500)
  void losesTheSameEitherWay(@ForAll @Scale(6) @DoubleRange(min = -12, max = 0) double logFlow) {
    double flow = Math.pow(10.0, logFlow);
    assertThat(PipeLoss.head(-flow, 0.032, 4.0, 1e-5, 3.0, COLD_WATER))
        .isEqualTo(-PipeLoss.head(flow, 0.032, 4.0, 1e-5, 3.0, COLD_WATER));
    assertThat(PipeLoss.headPerFlow(-flow, 0.032, 4.0, 1e-5, 3.0, COLD_WATER))
        .isEqualTo(PipeLoss.headPerFlow(flow, 0.032, 4.0, 1e-5, 3.0, COLD_WATER));
  }

  @Property(tries = 500)
  void headAndFlowAreEachOthersInverse(
      @ForAll @Scale(6) @DoubleRange(min = -6, max = 1) double logHead,
      @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 0.2) double diameter) {
    double head = Math.pow(10.0, logHead);
    double flow = PipeFlow.under(head, diameter, 5.0, 1.5e-6, 2.5, COLD_WATER);
    assertThat(PipeLoss.head(flow, diameter, 5.0, 1.5e-6, 2.5, COLD_WATER))
        .isCloseTo(head, within(1e-9 * head));
  }
}
