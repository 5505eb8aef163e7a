package dryfloor.app.view.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.app.report.TimeScale;
import org.junit.jupiter.api.Test;

class PaceTest {

  private static final double THREE_DAYS = 3 * 24 * 3600;

  @Test
  void aPlayRunsEvenlyAlongTheScale() {
    Pace pace = new Pace(new TimeScale(THREE_DAYS), 20);
    double half = pace.after(0, 10);
    assertThat(pace.scale().share(half)).isEqualTo(0.5, within(1e-9));
    assertThat(pace.isOver(pace.after(half, 9.9))).isFalse();
    assertThat(pace.isOver(pace.after(half, 10))).isTrue();
  }
}
