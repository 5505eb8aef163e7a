package dryfloor.analysis.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FrictionTest {

  /** Colebrook, Journal of the Institution of Civil Engineers 11 (1939) 133–156, solved. */
  static double colebrook(double reynolds, double relativeRoughness) {
    double rootInverse = 8.0;
    for (int i = 0; i < 60; i++) {
      rootInverse = -2.0 * Math.log10(relativeRoughness / 3.7 + 2.51 * rootInverse / reynolds);
    }
    return 1.0 / (rootInverse * rootInverse);
  }

  /** Documented result of a fluids library; closed form, in a quotation. */
  @Test
  void comparesWithAColebrookThatIsSolvedRight() {
    assertThat(colebrook(1e5, 1e-4)).isCloseTo(0.018513866077, within(1e-10 * 0.0185));
  }

  /** Churchill (1977); documented result of a fluids library; closed form, in a quotation. */
  @Test
  void isChurchillsExpression() {
    assertThat(Friction.factor(1e5, 1e-4)).isCloseTo(0.018462624566, within(2e-6 * 0.0185));
  }

  /** Hagen–Poiseuille, f = 64/Re; closed form. */
  @ParameterizedTest(name = "Re {0}")
  @CsvSource({"1e-12", "1e-3", "1", "128", "499.999", "500.001", "800"})
  void isLaminarInSlowFlow(double reynolds) {
    assertThat(Friction.factor(reynolds, 0.01))
        .isCloseTo(64.0 / reynolds, within(1e-12 * 64.0 / reynolds));
  }

  /**
   * The figures that {@link Friction} quotes for its distance from Colebrook–White, over relative
   * roughness 0 to 0.05. They are measured here, so they may not be exceeded, nor be far too
   * generous.
   */
  @ParameterizedTest(name = "from Re {0} on at most {1} above and {2} below")
  @CsvSource({"4e3, 0.0313, 0.0065", "1e4, 0.0213, 0.0065", "1e5, 0.0147, 0.0065"})
  void staysCloseToColebrookWhite(double fromReynolds, double above, double below) {
    double[] roughnesses = {0, 1e-6, 1e-5, 5e-5, 1e-4, 5e-4, 1e-3, 2e-3, 5e-3, 0.01, 0.02, 0.05};
    double highest = 0.0;
    double lowest = 0.0;
    for (double reynolds = fromReynolds; reynolds <= 1e8; reynolds *= 1.02) {
      for (double roughness : roughnesses) {
        double off = Friction.factor(reynolds, roughness) / colebrook(reynolds, roughness) - 1.0;
        highest = Math.max(highest, off);
        lowest = Math.min(lowest, off);
      }
    }
    assertThat(highest).isBetween(0.9 * above, above);
    assertThat(-lowest).isBetween(0.9 * below, below);
  }

  /**
   * McKeon, Swanson, Zagarola, Donnelly and Smits, Journal of Fluid Mechanics 511 (2004) 41–44,
   * smooth pipe; measurement, in a quotation. 5.5 % is the scatter of the points about
   * Colebrook–White.
   */
  @ParameterizedTest(name = "smooth pipe at Re {0}: measured {1}")
  @CsvSource({
    "3980, 0.03995", "4835, 0.03797", "5959, 0.0361", "8162, 0.03364", "10900, 0.03088",
    "13650, 0.02903", "18990, 0.0267", "29430, 0.02386", "40850, 0.02086", "59220, 0.02",
    "84760, 0.01805", "120000, 0.01686", "176000, 0.01594", "237700, 0.01511", "298200, 0.01462",
    "467800, 0.01365", "587500, 0.01313", "824200, 0.01244", "1050000, 0.01198"
  })
  void agreesWithMeasuredSmoothPipe(double reynolds, double measured) {
    assertThat(Friction.factor(reynolds, 0.0)).isCloseTo(measured, within(0.055 * measured));
  }

  /** The same authors in laminar flow; their points lie up to 14 % off 64/Re themselves. */
  @ParameterizedTest(name = "laminar at Re {0}: measured {1}")
  @CsvSource({
    "57.73, 1.173",
    "113.3, 0.5709",
    "228, 0.2884",
    "522.5, 0.1245",
    "1013, 0.06707",
    "1669, 0.04304",
    "1994, 0.03739"
  })
  void agreesWithMeasuredLaminarFlow(double reynolds, double measured) {
    assertThat(Friction.factor(reynolds, 0.0)).isCloseTo(measured, within(0.18 * measured));
  }

  /** At the point of the worked example of two reservoirs, Cengel and Cimbala, example 8-8. */
  @Test
  void liesALittleAboveColebrookInARoughPipe() {
    double reynolds = 116_900.0;
    double off = Friction.factor(reynolds, 0.0052) / colebrook(reynolds, 0.0052) - 1.0;
    assertThat(off).isBetween(0.0065, 0.0075);
  }

  @Property(tries = 2000)
  void slopeIsThatOfTheFactor(
      @ForAll @Scale(6) @DoubleRange(min = -3, max = 8) double logReynolds,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.05) double roughness) {
    double reynolds = Math.pow(10.0, logReynolds);
    double step = 1e-5;
    double difference =
        Math.log(Friction.factor(reynolds * Math.exp(step), roughness))
            - Math.log(Friction.factor(reynolds * Math.exp(-step), roughness));
    assertThat(Friction.logarithmicSlope(reynolds, roughness))
        .isCloseTo(difference / (2.0 * step), within(1e-5));
  }
}
