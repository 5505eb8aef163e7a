package dryfloor.analysis.hydraulics;

import static dryfloor.analysis.hydraulics.ReferenceCase.expect;

import dryfloor.analysis.hydraulics.ReferenceCase.Kind;
import dryfloor.analysis.hydraulics.ReferenceCase.Seen;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * How long vessels take to empty or to level out, by integrating the laws over the falling level.
 */
class EmptyingTest {

  private static final double FOOT = 0.3048;

  static Stream<ReferenceCase> holes() {
    return Stream.of(
        expect("1.2 to 0.6 m through 13 mm, vessel 0.9 m wide, s", 11.6 * 60.0, 0.005)
            .workedExample(
                "Cengel and Cimbala, example 5-2, p. 191",
                time(1.2, 0.6, 9.81, round(0.9), hole(1.0, 0.013))),
        // The source's formula gives 2123.957 s to the end, its print 2124.5 s; the formula is
        // taken.
        expect("1 m³ through 20 mm down to the last 10 mm, s", untilTheLastCentimetre(), 0.0002)
            .from(
                Kind.CLOSED_FORM,
                Seen.IN_A_QUOTATION,
                "Schaschke, example 6.3, p. 147, evaluated with its gravity of 9.8",
                time(4.0 / Math.PI, 0.01, 9.8, round(1.0), hole(0.6, 0.02))),
        expect("sphere of 2 m radius from 1.5 m through 50 mm, s", 2285.0, 0.001)
            .workedExample(
                "Schaschke, example 6.4, p. 149",
                time(1.5, 1e-5, 9.81, h -> Math.PI * (4.0 * h - h * h), hole(0.6, 0.05))),
        expect("two tanks of 8 and 4 m² from 0.30 to 0.10 m apart, s", 44.96, 0.0005)
            .workedExample(
                "Schaschke, example 6.6, p. 153",
                time(0.3, 0.1, 9.81, h -> 8.0 / 3.0, h -> Orifice.flow(0.62, 0.01, h))),
        expect("two tanks of 72 and 24 ft² from 9 to 4 ft apart, s", 4.5 * 60.0, 0.01)
            .workedExample(
                "Lal, example 3.11, p. 89",
                time(
                    9.0 * FOOT,
                    4.0 * FOOT,
                    9.81,
                    h -> 18.0 * FOOT * FOOT,
                    h -> Orifice.flow(0.6, 4.0 * Math.pow(FOOT / 12.0, 2), h))),
        expect("6 to 2 ft through 2 in, vessel 4 ft wide, Cd 0.619, s", 240.0, 0.003)
            .from(
                Kind.MEASUREMENT,
                Seen.IN_A_QUOTATION,
                "Lal, example 3.6, p. 82",
                time(6 * FOOT, 2 * FOOT, 9.81, round(4 * FOOT), hole(0.619, FOOT / 6.0))),
        // The printed 1536 s comes from a slide-rule logarithm; the integral itself is the check.
        expect("1.5 to 0.5 m with half the first outflow coming in, s", 1525.25447, 0.001)
            .from(
                Kind.CLOSED_FORM,
                Seen.IN_A_QUOTATION,
                "Schaschke, example 6.8, p. 157, integrated",
                time(1.5, 0.5, Physical.GRAVITY, h -> 150.0, EmptyingTest::lessWhatComesIn)));
  }

  static Stream<ReferenceCase> pipes() {
    double tanks = round(3.0).applyAsDouble(0) * round(2.0).applyAsDouble(0);
    double together = round(3.0).applyAsDouble(0) + round(2.0).applyAsDouble(0);
    double share = round(2.0).applyAsDouble(0) / together;
    return Stream.of(
        expect("4 m² through 20 m of 25 mm, 2.0 to 0.5 m, s", 11_190.0, 0.0005)
            .workedExample(
                "Schaschke, example 8.13, p. 221, Fanning f 0.005",
                time(
                    2.0,
                    0.5,
                    9.81,
                    h -> 4.0,
                    h -> PipeFlow.under(h, 0.025, 0.0, 0.0, 0.02 * 20.0 / 0.025 + 2.5, 1e-8))),
        expect("0.75 m³ of thick liquid through 3 m of 25 mm, laminar, s", 1535.8, 0.004)
            .workedExample(
                "Schaschke, example 6.10, p. 161",
                time(
                    1.5,
                    1.5 - 0.75 / round(1.2).applyAsDouble(0),
                    Physical.GRAVITY,
                    round(1.2),
                    h -> PipeFlow.under(h, 0.025, 3.0, 0.0, 0.0, 0.08 / 1100.0))),
        expect("fall of the larger of two tanks joined by two pipes in 900 s, m", 0.359, 0.003)
            .workedExample(
                "Massey and Ward-Smith, example 7.6, p. 286, Fanning f 0.007",
                share * (1.8 - differenceAfter(900.0, tanks / together))));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("holes")
  void takesAsLongThroughAHoleAsOthersPublished(ReferenceCase published) {
    published.holds();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("pipes")
  void takesAsLongThroughAPipeAsOthersPublished(ReferenceCase published) {
    published.holds();
  }

  /**
   * Time goes with the root of the head; the last 10 mm are left out, since there the law bends.
   */
  private static double untilTheLastCentimetre() {
    return 2123.95728 * (1.0 - Math.sqrt(0.01 / (4.0 / Math.PI)));
  }

  private static double lessWhatComesIn(double head) {
    double size = 0.4 / Math.sqrt(2.0 * Physical.GRAVITY * 1.5);
    return Orifice.flow(1.0, size, head) - 0.2;
  }

  private static DoubleUnaryOperator round(double diameter) {
    return head -> Physical.areaOfBore(diameter);
  }

  private static DoubleUnaryOperator hole(double coefficient, double diameter) {
    return head -> Orifice.flow(coefficient, Physical.areaOfBore(diameter), head);
  }

  /**
   * Time to fall between two heads, s, by Simpson's rule over the root of the head, corrected to
   * the gravity that the source used: under a root law time goes with its inverse root.
   */
  private static double time(
      double from,
      double to,
      double gravity,
      DoubleUnaryOperator surface,
      DoubleUnaryOperator outflow) {
    int steps = 2000;
    double start = Math.sqrt(to);
    double width = (Math.sqrt(from) - start) / steps;
    double sum = 0.0;
    for (int i = 0; i <= steps; i++) {
      double root = start + i * width;
      double head = root * root;
      double weight = i == 0 || i == steps ? 1.0 : i % 2 == 1 ? 4.0 : 2.0;
      sum += weight * 2.0 * root * surface.applyAsDouble(head) / outflow.applyAsDouble(head);
    }
    return sum * width / 3.0 * Math.sqrt(Physical.GRAVITY / gravity);
  }

  /** Difference of two levels joined by two pipes of 75 m and 50 mm, after some seconds, m. */
  private static double differenceAfter(double seconds, double sharedSurface) {
    double losses = 0.028 * 75.0 / 0.05 + 1.5;
    DoubleUnaryOperator fall =
        z -> -2.0 * PipeFlow.under(z, 0.05, 0.0, 0.0, losses, 1e-8) / sharedSurface;
    double difference = 1.8;
    int steps = 300;
    double step = seconds / steps;
    for (int i = 0; i < steps; i++) {
      double half = difference + 0.5 * step * fall.applyAsDouble(difference);
      difference += step * fall.applyAsDouble(half);
    }
    return difference;
  }
}
