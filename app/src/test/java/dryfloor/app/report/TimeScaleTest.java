package dryfloor.app.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** A scale that shows seconds and days alike. */
class TimeScaleTest {

  private static final double THREE_DAYS = 3 * 24 * 3600;

  @Test
  void theFailureIsAtTheBeginningAndTheLastMomentAtTheEnd() {
    TimeScale scale = new TimeScale(THREE_DAYS);
    assertThat(scale.share(0)).isZero();
    assertThat(scale.share(THREE_DAYS)).isEqualTo(1);
    assertThat(scale.share(Double.POSITIVE_INFINITY)).isEqualTo(1);
  }

  @Test
  void tenSecondsAndThreeDaysBothHaveRoom() {
    TimeScale scale = new TimeScale(THREE_DAYS);
    assertThat(scale.share(10)).isGreaterThan(0.1);
    assertThat(1 - scale.share(24 * 3600)).isGreaterThan(0.05);
  }

  @Property
  void everyPlaceOnTheScaleIsATimeThatLiesThere(
      @ForAll @DoubleRange(min = 0, max = 1) double share,
      @ForAll @DoubleRange(min = 1, max = 1e7) double duration) {
    TimeScale scale = new TimeScale(duration);
    assertThat(scale.share(scale.time(share))).isEqualTo(share, within(1e-9));
  }

  @Property
  void laterLiesFurtherOn(
      @ForAll @DoubleRange(min = 0, max = 1e5) double early,
      @ForAll @DoubleRange(min = 1, max = 1e5) double later) {
    TimeScale scale = new TimeScale(1e6);
    assertThat(scale.share(early + later)).isGreaterThan(scale.share(early));
  }

  @Test
  void marksStandAtTimesThatPeopleSpeakOf() {
    assertThat(new TimeScale(THREE_DAYS).ticks(0.05))
        .extracting(TimeScale.Tick::label)
        .containsSubsequence("0 s", "1 s", "10 s", "1 min", "10 min", "1 h", "1 d");
  }

  @Property
  void marksLeaveRoomForTheirLetters(
      @ForAll @DoubleRange(min = 1, max = 1e7) double duration,
      @ForAll @DoubleRange(min = 0.02, max = 0.5) double clearance) {
    TimeScale scale = new TimeScale(duration);
    List<TimeScale.Tick> ticks = scale.ticks(clearance);
    for (int i = 1; i < ticks.size(); i++) {
      double room = scale.share(ticks.get(i).time()) - scale.share(ticks.get(i - 1).time());
      assertThat(room).isGreaterThanOrEqualTo(clearance);
    }
  }

  @Test
  void nothingLastsNoTimeAtAll() {
    assertThatThrownBy(() -> new TimeScale(0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("more than 0 s");
  }
}
