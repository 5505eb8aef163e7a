package dryfloor.analysis.hydraulics;

import static dryfloor.analysis.hydraulics.ReferenceCase.expect;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.analysis.hydraulics.ReferenceCase.Kind;
import dryfloor.analysis.hydraulics.ReferenceCase.Seen;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class WeirTest {

  private static final double FOOT = 0.3048;
  private static final double CUBIC_FOOT = FOOT * FOOT * FOOT;

  /**
   * What separates published sets of Rehbock's coefficients from one another: those of ISO 1438 lie
   * 0.6, 0.8 and 1.0 % below the three quoted here.
   */
  private static final double BETWEEN_COEFFICIENT_SETS = 0.0105;

  static Stream<ReferenceCase> published() {
    return Stream.of(
        expect("weir of 7.573 ft under 1.2 ft, Cd 0.62, ft³/s", 33.02, 0.001)
            .workedExample(
                "Lal, example 4.5, p. 108",
                Weir.withCoefficient(0.62, 1.2 * FOOT, 7.573 * FOOT) / CUBIC_FOOT),
        expect("the same weir by Rehbock, ft³/s", 34.12, BETWEEN_COEFFICIENT_SETS)
            .from(
                Kind.SECOND_FORMULA,
                Seen.IN_A_QUOTATION,
                "Lal, example 4.5, p. 108, an older set of coefficients",
                Weir.flow(1.2 * FOOT, 7.573 * FOOT, 2.85 * FOOT) / CUBIC_FOOT),
        expect("weir of 5 m under 0.9 m, Cd 0.598 + 0.0897 h/P, m³/s", 9.23, 0.001)
            .workedExample(
                "Cengel and Cimbala, example 13-10",
                Weir.withCoefficient(0.598 + 0.0897 * 1.5, 0.9, 5.0)),
        expect("the same weir by ISO 1438's coefficients, m³/s", 9.23, BETWEEN_COEFFICIENT_SETS)
            .from(
                Kind.SECOND_FORMULA,
                Seen.IN_A_QUOTATION,
                "Cengel and Cimbala, example 13-10, another set of coefficients",
                Weir.flow(0.9, 5.0, 0.6)),
        expect("the same weir once more, m³/s", 9.252, BETWEEN_COEFFICIENT_SETS)
            .from(
                Kind.SECOND_FORMULA,
                Seen.IN_A_QUOTATION,
                "Ackers and others (1978)",
                Weir.flow(0.9, 5.0, 0.6)),
        expect("half drowned weir, share of the free flow", Math.pow(1 - 0.353553, 0.385), 1e-6)
            .from(
                Kind.CLOSED_FORM,
                Seen.FROM_MEMORY,
                "Villemonte (1947), (1 − 0.5^1.5)^0.385",
                Weir.drowning(0.2, 0.1)));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("published")
  void agreesWithWhatOthersPublished(ReferenceCase published) {
    published.holds();
  }

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
