package dryfloor.analysis.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class FittingTest {

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
