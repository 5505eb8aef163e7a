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

    assertThat(history.rates(3).get(0)).containsExactly(0.002f);
    assertThat(history.rates(3).get(1)).containsExactly(-0.0005f);
  }

  @Test
  void aFlowThatGoesOnIsKeptOnce() {
    FlowHistory history = new FlowHistory(2);
    history.add(0, new double[] {0, 0}, true);
    history.add(10, new double[] {0.020, 0.01}, false);
    history.add(20, new double[] {0.040, 0.01}, true);

    assertThat(history.changed(3).get(0)).containsExactly(0, 1);
    assertThat(history.changed(3).get(1)).containsExactly(1);
    assertThat(history.rates(3).get(1)).containsExactly(0f);
  }

  @Test
  void aSpanWithoutTimeChangesNoFlow() {
    FlowHistory history = new FlowHistory(1);
    history.add(0, new double[] {0}, true);
    history.add(0, new double[] {0.5}, false);

    assertThat(history.changed(2).get(0)).isEmpty();
  }
}
