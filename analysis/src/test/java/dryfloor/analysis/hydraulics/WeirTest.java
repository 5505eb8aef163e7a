package dryfloor.analysis.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class WeirTest {

  @Test
  void passesNothingBelowItsCrest() {
    assertThat(Weir.flow(0.0, 1.0, 0.5)).isZero();
    assertThat(Weir.flow(-0.1, 1.0, 0.5)).isZero();
    assertThat(Weir.flowPerHead(0.0, 1.0, 0.5)).isZero();
    assertThat(Weir.drownedFlow(-0.1, -0.2, 1.0, 0.5)).isZero();
  }

  @Test
  void startsFromNothingWithoutAStep() {
    assertThat(Weir.flow(1e-9, 1.0, 0.5)).isPositive().isLessThan(1e-12);
  }

  @Test
  void crestAtTheFloorPassesWhatAVeryLowCrestPasses() {
    assertThat(Weir.flow(0.1, 1.0, 0.0)).isCloseTo(Weir.flow(0.1, 1.0, 1e-6), within(1e-12));
    assertThat(Weir.flowPerHead(0.1, 1.0, 0.0)).isPositive();
  }

  @Test
  void downstreamWaterBelowTheCrestChangesNothing() {
    assertThat(Weir.drowning(0.1, 0.0)).isEqualTo(1.0);
    assertThat(Weir.drownedFlow(0.1, -0.3, 2.0, 0.5)).isEqualTo(Weir.flow(0.1, 2.0, 0.5));
    assertThat(Weir.drownedFlowPerDownstreamHead(0.1, -0.3, 2.0, 0.5)).isZero();
  }

  @Test
  void passesNothingWhereBothLevelsMeet() {
    assertThat(Weir.drowning(0.1, 0.1)).isZero();
    assertThat(Weir.drowning(0.1, 0.2)).isZero();
    assertThat(Weir.drownedFlowPerUpstreamHead(0.1, 0.1, 2.0, 0.5)).isPositive().isFinite();
    assertThat(Weir.drownedFlowPerDownstreamHead(0.1, 0.1, 2.0, 0.5)).isNegative().isFinite();
  }

  @Test
  void drowningHasNoJumpWhereItBecomesAStraightLine() {
    double join = Math.pow(1.0 - 1e-3, 2.0 / 3.0);
    assertThat(Weir.drowning(1.0, join * (1.0 + 1e-12)))
        .isCloseTo(Weir.drowning(1.0, join * (1.0 - 1e-12)), within(1e-9));
  }

  @Property(tries = 500)
  void moreWaterDownstreamNeverHelps(
      @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 1) double upstream,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double share,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double nextShare) {
    double less = upstream * Math.min(share, nextShare);
    double more = upstream * Math.max(share, nextShare);
    assertThat(Weir.drownedFlow(upstream, more, 1.0, 0.3))
        .isLessThanOrEqualTo(Weir.drownedFlow(upstream, less, 1.0, 0.3));
    assertThat(Weir.drowning(upstream, more)).isBetween(0.0, 1.0);
  }

  @Property(tries = 1000)
  void slopeIsThatOfTheFlow(
      @ForAll @Scale(6) @DoubleRange(min = -6, max = 0.5) double logHead,
      @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 2) double crestHeight) {
    double head = Math.pow(10.0, logHead);
    double step = 1e-5 * head;
    double difference =
        Weir.flow(head + step, 1.5, crestHeight) - Weir.flow(head - step, 1.5, crestHeight);
    double slope = Weir.flowPerHead(head, 1.5, crestHeight);
    assertThat(slope).isPositive().isCloseTo(difference / (2.0 * step), within(1e-5 * slope));
  }

  @Property(tries = 1000)
  void partialSlopesAreThoseOfTheDrownedFlow(
      @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 1) double upstream,
      @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 0.999) double share) {
    double downstream = upstream * share;
    double step = 1e-7 * upstream;
    double free = 1.0 - Math.pow(share, 1.5);
    if (Math.abs(free - 1e-3) < 1e-5) {
      return;
    }
    double up =
        Weir.drownedFlow(upstream + step, downstream, 1.0, 0.3)
            - Weir.drownedFlow(upstream - step, downstream, 1.0, 0.3);
    double down =
        Weir.drownedFlow(upstream, downstream + step, 1.0, 0.3)
            - Weir.drownedFlow(upstream, downstream - step, 1.0, 0.3);
    double upSlope = Weir.drownedFlowPerUpstreamHead(upstream, downstream, 1.0, 0.3);
    double downSlope = Weir.drownedFlowPerDownstreamHead(upstream, downstream, 1.0, 0.3);
    assertThat(upSlope).isPositive().isCloseTo(up / (2.0 * step), within(1e-4 * upSlope));
    assertThat(downSlope).isNegative().isCloseTo(down / (2.0 * step), within(-1e-4 * downSlope));
  }
}
