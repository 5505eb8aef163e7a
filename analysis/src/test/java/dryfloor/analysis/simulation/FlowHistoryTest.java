package dryfloor.analysis.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Mean flows between the moments that are kept. */
class FlowHistoryTest {

  @Test
  void waterThatPassedBetweenTwoKeptMomentsIsAFlow() {
    FlowHistory history = new FlowHistory(1);
    history.add(0, new double[] {0}, true);
    history.add(10, new double[] {0.020}, false);
    history.add(20, new double[] {0.040}, false);
    history.add(30, new double[] {0.035}, true);

    assertThat(history.between(3).get(0)[0]).isEqualTo(0.002f);
    assertThat(history.between(3).get(1)[0]).isEqualTo(-0.0005f);
  }

  @Test
  void aSpanWithoutTimeHasNoFlow() {
    FlowHistory history = new FlowHistory(1);
    history.add(0, new double[] {0}, true);
    history.add(0, new double[] {0.5}, false);

    assertThat(history.between(2).get(0)[0]).isZero();
  }
}
