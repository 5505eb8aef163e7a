package dryfloor.analysis.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;

/** Round pipes that run partly full. */
class OpenRunTest {

  @Test
  void holdsHalfItsBoreAtHalfTheFlowOfTheFullPipe() {
    double full = OpenRun.flow(0.05, 0.05, 0.02, OpenRun.SMOOTH_PLASTIC);

    double area = OpenRun.areaAtFlow(full / 2, 0.05, 0.02, OpenRun.SMOOTH_PLASTIC);

    assertThat(area).isCloseTo(Physical.areaOfBore(0.05) / 2, withPercentage(0.01));
  }

  @Test
  void isFullWhereItCannotCarryTheFlowWithAirAbove() {
    double most = OpenRun.flow(0.938 * 0.05, 0.05, 0.02, OpenRun.SMOOTH_PLASTIC);

    assertThat(OpenRun.areaAtFlow(1.01 * most, 0.05, 0.02, OpenRun.SMOOTH_PLASTIC))
        .isEqualTo(Physical.areaOfBore(0.05));
    assertThat(OpenRun.areaAtFlow(1e-4, 0.05, 0, OpenRun.SMOOTH_PLASTIC))
        .isEqualTo(Physical.areaOfBore(0.05));
  }

  @Test
  void isEmptyWithoutFlow() {
    assertThat(OpenRun.areaAtFlow(0, 0.05, 0.02, OpenRun.SMOOTH_PLASTIC))
        .isCloseTo(0, within(1e-9));
    assertThat(OpenRun.flow(0, 0.05, 0.02, OpenRun.SMOOTH_PLASTIC)).isZero();
  }
}
