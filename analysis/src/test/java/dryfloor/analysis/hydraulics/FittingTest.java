package dryfloor.analysis.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class FittingTest {

  /** Ranges between sources; quotations of the named tables. */
  @ParameterizedTest(name = "{0}: {1} to {2} ({3})")
  @CsvSource({
    "ENTRANCE,             0.50, 0.57, 'Crane, Idelchik, Blevins; Miller; Rennels and Hudson'",
    "ENTRANCE_RE_ENTRANT,  0.5,  1.0,  'handbook table without author; water supply handbook'",
    "EXIT,                 1.0,  1.06, 'Borda–Carnot; Cengel and Cimbala, example 8-8'",
    "ELBOW_90,             0.3,  1.5,  'Munson, table 8.2'",
    "LONG_BEND_90,         0.2,  0.7,  'Munson, table 8.2'",
    "ELBOW_45,             0.2,  0.42, 'Munson, table 8.2; water supply handbook'",
    "RETURN_BEND_180,      0.2,  2.2,  'Munson, table 8.2; water supply handbook'",
    "TEE_THROUGH,          0.2,  0.9,  'Munson, table 8.2'",
    "TEE_BRANCH,           1.0,  2.0,  'Munson, table 8.2'",
    "UNION,                0.04, 0.08, 'Munson, table 8.2'",
    "BALL_VALVE_OPEN,      0.05, 0.07, 'Munson, table 8.2; Crane'",
    "GATE_VALVE_OPEN,      0.1,  0.3,  'Munson, table 8.2; handbook table without author'",
    "GLOBE_VALVE_OPEN,     3,    10,   'Munson, table 8.2; handbook table without author'",
    "ANGLE_VALVE_OPEN,     2,    5,    'Munson, table 8.2; water supply handbook'",
    "SWING_CHECK,          1.15, 2.5,  'Crane TP-410 (2009), 50 fT to 100 fT, 20 to 25 mm'",
    "LIFT_CHECK,           10,   15,   'Crane TP-410M (2009), 600 fT, 20 to 25 mm'"
  })
  void losesWhatTablesSay(Fitting fitting, double least, double most, String source) {
    assertThat(fitting.lossCoefficient()).as(source).isBetween(least, most);
  }

  @ParameterizedTest
  @EnumSource
  void alwaysCostsHead(Fitting fitting) {
    assertThat(fitting.lossCoefficient()).isPositive().isFinite();
  }

  @Test
  void gentlerTurnsCostLess() {
    assertThat(Fitting.LONG_BEND_90.lossCoefficient())
        .isLessThan(Fitting.ELBOW_90.lossCoefficient());
    assertThat(Fitting.ELBOW_90.lossCoefficient()).isLessThan(Fitting.MITRE_90.lossCoefficient());
    assertThat(Fitting.ELBOW_45.lossCoefficient()).isLessThan(Fitting.ELBOW_90.lossCoefficient());
    assertThat(Fitting.TEE_THROUGH.lossCoefficient())
        .isLessThan(Fitting.TEE_BRANCH.lossCoefficient());
  }
}
