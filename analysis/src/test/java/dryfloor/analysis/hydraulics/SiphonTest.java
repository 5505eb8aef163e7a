package dryfloor.analysis.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.hydraulics.Siphon.BreakHole;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SiphonTest {

  private static final Water WATER = new Water(1000.0, 1e-8, 2339.0);

  /** The sizes are common practice: 3 mm in a bore of 25 mm and a quarter of its area. */
  @ParameterizedTest(name = "a hole of {0} mm in a bore of {1} mm is {2}")
  @CsvSource({
    "0, 25, TOO_SMALL",
    "1.4, 25, TOO_SMALL",
    "1.5, 25, IN_DOUBT",
    "2.9, 25, IN_DOUBT",
    "3, 25, CERTAIN",
    "3.1, 50, IN_DOUBT",
    "6, 50, CERTAIN",
    "25, 25, CERTAIN"
  })
  void breaksAtAHoleLargeEnoughForItsBore(double hole, double bore, BreakHole expected) {
    assertThat(Siphon.breakHole(area(hole), area(bore))).isEqualTo(expected);
  }

  @Test
  void crestSinksByWhatIsLostOnTheWay() {
    assertThat(Siphon.highestCrest(1.5, WATER)).isEqualTo(Siphon.highestCrest(0.0, WATER) - 1.5);
    assertThat(Siphon.highestCrest(0.0, Water.at(40.0, 0.0)))
        .isLessThan(Siphon.highestCrest(0.0, Water.at(10.0, 0.0)));
  }

  private static double area(double millimetres) {
    return Physical.areaOfBore(millimetres / 1000.0);
  }
}
