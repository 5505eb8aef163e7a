package dryfloor.analysis.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class PumpCurveTest {

  private static final PumpCurve TABULATED =
      PumpCurve.through(
          new double[] {0.0, 0.002, 0.004, 0.006, 0.008, 0.010},
          new double[] {40.0, 39.5, 38.0, 35.0, 30.0, 20.0});

  @Test
  void passesThroughTheMakersPoints() {
    assertThat(TABULATED.head(0.0)).isEqualTo(40.0);
    assertThat(TABULATED.head(0.004)).isCloseTo(38.0, within(1e-12));
    assertThat(TABULATED.head(0.010)).isCloseTo(20.0, within(1e-12));
  }

  @Test
  void twoPointsGiveAStraightLine() {
    PumpCurve curve = PumpCurve.through(new double[] {0.0, 0.002}, new double[] {4.0, 0.0});
    assertThat(curve.head(0.0005)).isCloseTo(3.0, within(1e-12));
    assertThat(curve.runOutFlow()).isEqualTo(0.002);
  }

  @Test
  void waterDrivenBackwardMeetsMoreThanTheShutOffHead() {
    assertThat(TABULATED.head(-0.01)).isGreaterThan(2.0 * TABULATED.shutOffHead());
  }

  @Test
  void waterDrivenForwardBeyondItsReachCostsHead() {
    assertThat(TABULATED.head(1.01 * TABULATED.runOutFlow())).isNegative();
    assertThat(TABULATED.head(10.0 * TABULATED.runOutFlow())).isLessThan(-1000.0);
  }

  @Test
  void curveThatBeginsAboveZeroFlowIsCarriedToShutOff() {
    PumpCurve curve =
        PumpCurve.through(new double[] {0.001, 0.002, 0.003}, new double[] {4.0, 3.0, 1.0});
    assertThat(curve.shutOffHead()).isGreaterThan(4.0).isLessThan(5.0);
  }

  @Test
  void halfTheSpeedGivesHalfTheFlowAndAQuarterOfTheHead() {
    PumpCurve half = TABULATED.atSpeed(0.5);
    for (double flow = -0.02; flow < 0.03; flow += 0.0007) {
      assertThat(half.head(0.5 * flow)).isCloseTo(0.25 * TABULATED.head(flow), within(1e-9));
    }
  }

  @Test
  void wornPumpKeepsItsShutOffHeadAndLosesFlow() {
    PumpCurve worn = TABULATED.withFlowScaled(0.5);
    assertThat(worn.shutOffHead()).isEqualTo(TABULATED.shutOffHead());
    assertThat(worn.runOutFlow()).isCloseTo(0.5 * TABULATED.runOutFlow(), within(1e-12));
    assertThat(worn.head(0.003)).isCloseTo(TABULATED.head(0.006), within(1e-9));
  }

  @Test
  void curveKeepsItsOwnCopyOfThePoints() {
    double[] heads = {4.0, 1.0};
    PumpCurve curve = PumpCurve.through(new double[] {0.0, 0.002}, heads);
    heads[0] = 99.0;
    assertThat(curve.shutOffHead()).isEqualTo(4.0);
  }

  @Test
  void pointsThatAreNoPumpAreRefusedByNumber() {
    assertRefused(new double[] {0.0}, new double[] {4.0}, "two or more points");
    assertRefused(new double[] {0.0, 1.0}, new double[] {4.0}, "2 flows and 1 heads");
    assertRefused(new double[] {0.0, 1.0}, new double[] {4.0, 4.0}, "point 2", "must fall");
    assertRefused(new double[] {0.0, 0.0}, new double[] {4.0, 3.0}, "point 2", "order");
    assertRefused(new double[] {-1.0, 1.0}, new double[] {4.0, 3.0}, "point 1", "0 or more");
    assertRefused(new double[] {0.0, 1.0}, new double[] {4.0, -1.0}, "point 2", "0 or more");
    assertRefused(new double[] {0.0, Double.NaN}, new double[] {4.0, 1.0}, "point 2");
  }

  @Test
  void stoppedPumpHasNoCurve() {
    assertThatThrownBy(() -> TABULATED.atSpeed(0.0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("fraction of speed is 0.0");
    assertThatThrownBy(() -> TABULATED.withFlowScaled(-0.5))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("fraction of flow is -0.5");
  }

  private static void assertRefused(double[] flows, double[] heads, String... says) {
    assertThatThrownBy(() -> PumpCurve.through(flows, heads))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContainingAll(says);
  }
}
