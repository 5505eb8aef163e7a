package dryfloor.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.outcome.StoryEvent;
import dryfloor.analysis.outcome.StoryEvent.What;
import dryfloor.app.sample.SampleInstallation;
import dryfloor.app.sample.SampleOutcome;
import dryfloor.model.unit.Units;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class StoryDigestTest {

  @Test
  void whatHappensOverAndOverIsToldTwiceAndCounted() {
    assertThat(digest(cycles(30)).stream().map(StoryDigest.Moment::sentence))
        .containsExactly(
            "The top-off pump starts.",
            "The top-off pump stops.",
            "The top-off pump starts. This happens 28 more times, the last time after 29 min.",
            "The top-off pump stops. This happens 28 more times, the last time after 29 min 10 s.");
  }

  @Test
  void whatHappensInOneBreathIsSaidToGoOnOnce() {
    List<StoryEvent> story =
        IntStream.range(0, 9)
            .boxed()
            .flatMap(
                i ->
                    Stream.of(
                        SampleOutcome.event(60 * i, What.ACTS, "top-off-switch", "sump", -1),
                        SampleOutcome.event(60 * i, What.STARTS, "top-off-pump", "", -1)))
            .toList();
    assertThat(digest(story).stream().map(StoryDigest.Moment::sentence))
        .containsExactly(
            "The top-off switch trips on the water in the sump.",
            "The top-off pump starts.",
            "The top-off switch trips on the water in the sump.",
            "The top-off pump starts. All this happens 7 more times, the last time after 8 min.");
  }

  @Test
  void aFewTimesAreToldOneByOne() {
    assertThat(digest(cycles(4))).hasSize(8);
  }

  @Test
  void whatFollowsALatePowerCutIsToldInSecondsFromThere() {
    double cut = 3 * 86_400;
    List<StoryEvent> story =
        List.of(
            SampleOutcome.event(11, What.STARTS, "top-off-pump", "", -1),
            SampleOutcome.event(cut, What.POWER_LOST, "plant-circuit", "", -1),
            SampleOutcome.event(cut, What.STOPS, "return-pump", "", -1),
            SampleOutcome.event(cut + 98, What.STOPS, "top-off-pump", "", -1),
            SampleOutcome.event(cut + 7200, What.STARTS, "top-off-pump", "", -1));

    assertThat(digest(story).stream().map(StoryDigest.Moment::time))
        .containsExactly("11 s", "3 d", "3 d", "3 d + 1 min 38 s", "3 d 2 h");
  }

  @Test
  void whatGoesRoundAndRoundIsToldByTheMinute() {
    // In three days 300 m³ of the 1.1 m³ that there are: 69 L/min, again and again.
    List<StoryEvent> story =
        List.of(
            SampleOutcome.event(0, What.BEGINS_TO_FLOW, "main-drain", "sump", 300),
            SampleOutcome.event(0, What.BEGINS_TO_FLOW, "tray-drain", "gully", 0.4));

    assertThat(digest(story).stream().map(StoryDigest.Moment::sentence))
        .containsExactly(
            "The main drain begins to carry water into the sump: 69 L/min on average, the same"
                + " water again and again.",
            "The tray drain begins to carry water into the gully in the cellar: 400 L in all.");
  }

  private static List<StoryEvent> cycles(int count) {
    return IntStream.range(0, count)
        .boxed()
        .flatMap(
            i ->
                Stream.of(
                    SampleOutcome.event(60 * i, What.STARTS, "top-off-pump", "", -1),
                    SampleOutcome.event(60 * i + 10, What.STOPS, "top-off-pump", "", -1)))
        .toList();
  }

  private static List<StoryDigest.Moment> digest(List<StoryEvent> story) {
    return new StoryDigest(Wording.of(SampleInstallation.get(), Units.METRIC))
        .of(SampleOutcome.telling(story));
  }
}
