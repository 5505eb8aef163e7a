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
