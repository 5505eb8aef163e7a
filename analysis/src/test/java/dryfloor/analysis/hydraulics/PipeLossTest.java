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

class PipeLossTest {

  private static final double COLD_WATER = 1e-6;

  /** Measured at Re 117 000 and relative roughness 0.0052, where the source solves Colebrook. */
  private static final double CHURCHILL_ABOVE_COLEBROOK = 0.007;

  static Stream<ReferenceCase> published() {
    return Stream.of(
        expect("friction factor, 50 mm plastic pipe, 200 L/min, 30 °C", 0.0179, 0.0056)
            .workedExample("Crane TP-410M (2009), example 7-1", Friction.factor(100_600.0, 0.0)),
        expect("friction factor, 50 mm stainless pipe, 6 L/s", 0.0172, 0.01)
            .workedExample(
                "Cengel and Cimbala, example 8-3, p. 360",
                Friction.factor(velocity(0.006, 0.05) * 0.05 * 999.0 / 1.138e-3, 2e-6 / 0.05)),
        expect("head lost in 60 m of 50 mm stainless pipe at 6 L/s, m", 9.85, 0.01)
            .workedExample(
                "Cengel and Cimbala, example 8-3, p. 360",
                PipeLoss.head(0.006, 0.05, 60.0, 2e-6, 0.0, 1.138e-3 / 999.0)),
        expect("friction factor, 50 mm cast iron, 6 L/s", 0.0315, 0.005 + CHURCHILL_ABOVE_COLEBROOK)
            .workedExample(
                "Cengel and Cimbala, example 8-8, p. 377, f by Colebrook",
                Friction.factor(velocity(0.006, 0.05) * 0.05 * 999.7 / 1.307e-3, 2.6e-4 / 0.05)),
        expect("upper level that drives 6 L/s, m", 31.8, 0.005 + CHURCHILL_ABOVE_COLEBROOK)
            .workedExample(
                "Cengel and Cimbala, example 8-8, p. 377, f by Colebrook",
                4.0 + PipeLoss.head(0.006, 0.05, 89.0, 2.6e-4, 2.36, 1.307e-3 / 999.7)),
        expect("the same level with the source's own friction factor, m", 31.8, 0.005)
            .workedExample(
                "Cengel and Cimbala, example 8-8, p. 377",
                4.0
                    + PipeLoss.head(
                        0.006, 0.05, 0.0, 0.0, 0.0315 * 89.0 / 0.05 + 2.36, 1.307e-3 / 999.7)),
        expect("bore that loses 20 m over 150 m at 0.35 m³/s of air, m", 0.267, 0.005)
            .workedExample(
                "Cengel and Cimbala, example 8-4, p. 361, equation solver", boreForTwentyMetres()),
        expect("head lost in 300 m of 150 mm galvanised steel at 50 L/s, m", 16.8, 0.015)
            .workedExample(
                "Massey and Ward-Smith, example 7.1, p. 255",
                PipeLoss.head(0.05, 0.15, 300.0, 1.5e-4, 0.0, 1.14e-6)),
        expect("head lost in 9 m of 3 mm tube at 0.9 m/s, laminar, m", 4.46, 0.003)
            .workedExample(
                "Cengel and Cimbala, example 8-2, p. 350",
                PipeLoss.head(0.9 * Physical.areaOfBore(0.003), 0.003, 9.0, 0.0, 0.0, 1.519e-6)),
        expect("velocity from a tank 7 m up through 60 m, elbows and ball valve, m/s", 2.74, 0.007)
            .workedExample("Crane TP-410M (2009), example 7-6", velocity(tankOutflow(), 0.0779)),
        expect("flow from the same tank, m³/s", 0.781 / 60.0, 0.007)
            .workedExample("Crane TP-410M (2009), example 7-6", tankOutflow()),
        expect("pressure below a 20 ft riser with faucet, valve and four elbows, psi", 30.5, 0.005)
            .workedExample("Munson, Young and Okiishi, example 8.8, p. 451", riserPressure()),
        expect("head lost at the end of a pipe, velocity heads", 1.0, 1e-6)
            .from(
                Kind.CLOSED_FORM,
                Seen.FROM_MEMORY,
                "Borda–Carnot",
                PipeLoss.head(0.01, 0.05, 0.0, 0.0, Fitting.EXIT.lossCoefficient(), COLD_WATER)
                    / velocityHead(0.01, 0.05)));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("published")
  void agreesWithWhatOthersPublished(ReferenceCase published) {
    published.holds();
  }

  /** Six threaded elbows of 30 f, ball valve of 60 mm seat with cones of 16° and 30°, free exit. */
  private static double tankOutflow() {
    double friction = 0.017;
    double narrowing = 1.0 - Math.pow(60.0 / 77.9, 2);
    double valve =
        (3.0 * friction
                + 0.8 * Math.sin(Math.toRadians(8.0)) * narrowing
                + 2.6 * Math.sin(Math.toRadians(15.0)) * narrowing * narrowing)
            / Math.pow(60.0 / 77.9, 4);
    double losses = friction * 60.0 / 0.0779 + 6 * 30 * friction + valve + 0.5 + 1.0;
    return PipeFlow.under(7.0, 0.0779, 0.0, 0.0, losses, COLD_WATER);
  }

  /** The source gives f = 0.0215; the faucet of 0.5 in sends the water out faster than the pipe. */
  private static double riserPressure() {
    double foot = 0.3048;
    double flow = 0.0267 * foot * foot * foot;
    double bore = 0.0625 * foot;
    double losses = 0.0215 * 60.0 / 0.0625 + 10.0 + 4 * 1.5 + 2.0;
    double faucetVelocityHead = velocityHead(flow, 0.5 * foot / 12.0);
    double head =
        20.0 * foot
            + faucetVelocityHead
            - velocityHead(flow, bore)
            + PipeLoss.head(flow, bore, 0.0, 0.0, losses, 1.1e-6);
    return head * 999.0 * Physical.GRAVITY / 6894.757;
  }

  private static double boreForTwentyMetres() {
    double narrow = 0.1;
    double wide = 1.0;
    while (wide - narrow > 1e-9) {
      double middle = 0.5 * (narrow + wide);
      if (PipeLoss.head(0.35, middle, 150.0, 0.0, 0.0, 1.655e-5) > 20.0) {
        narrow = middle;
      } else {
        wide = middle;
      }
    }
    return wide;
  }

  private static double velocity(double flow, double diameter) {
    return flow / Physical.areaOfBore(diameter);
  }

  private static double velocityHead(double flow, double diameter) {
    return Math.pow(velocity(flow, diameter), 2) / (2.0 * Physical.GRAVITY);
  }

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
