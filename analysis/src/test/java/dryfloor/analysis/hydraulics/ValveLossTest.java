package dryfloor.analysis.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class ValveLossTest {

  @Test
  void losesOneBarAtItsRatedFlow() {
    double bar = ValveLoss.head(12.0 / 3600.0, 12.0) * 1000.0 * Physical.GRAVITY;
    assertThat(bar).isCloseTo(1e5, within(1e-3));
  }

  @Test
  void losesFourTimesAsMuchHalfOpen() {
    double open = ValveLoss.head(0.001, 10.0);
    double half = ValveLoss.head(0.001, ValveLoss.kvAtOpening(10.0, 0.5));
    assertThat(half).isCloseTo(4.0 * open, within(1e-6 * half));
  }

  @Property(tries = 500)
  void isTheSameLossAsItsCoefficientInAPipe(
      @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 100) double kv,
      @ForAll @Scale(6) @DoubleRange(min = 0.02, max = 0.2) double diameter) {
    double flow = 0.2 * kv / 3600.0;
    double asFitting =
        PipeLoss.head(flow, diameter, 0.0, 0.0, ValveLoss.fittingsOf(kv, diameter), 1e-7);
    assertThat(ValveLoss.head(flow, kv)).isCloseTo(asFitting, within(1e-3 * asFitting));
  }

  @Property(tries = 500)
  void slopeIsThatOfTheLossAndNeverNothing(
      @ForAll @Scale(6) @DoubleRange(min = -12, max = -1) double logFlow,
      @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 500) double kv) {
    double flow = Math.pow(10.0, logFlow);
    double step = 1e-5 * flow;
    double difference = ValveLoss.head(flow + step, kv) - ValveLoss.head(flow - step, kv);
    double slope = ValveLoss.headPerFlow(flow, kv);
    assertThat(slope).isCloseTo(difference / (2.0 * step), within(1e-6 * slope));
    assertThat(ValveLoss.headPerFlow(-flow, kv)).isEqualTo(slope);
    assertThat(ValveLoss.headPerFlow(0.0, kv)).isPositive();
    assertThat(ValveLoss.head(-flow, kv)).isEqualTo(-ValveLoss.head(flow, kv));
  }
}
