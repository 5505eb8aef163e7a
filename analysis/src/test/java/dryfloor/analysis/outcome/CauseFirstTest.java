package dryfloor.analysis.outcome;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.failure.FailureCatalogue;
import dryfloor.analysis.installation.Shipped;
import dryfloor.analysis.installation.Trial;
import dryfloor.analysis.outcome.StoryEvent.What;
import dryfloor.model.Installation;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What happens at one moment is told with its cause first. */
class CauseFirstTest {

  @Test
  void aFloorGetsWetAfterTheRunThatWetsItRunsBackwards() {
    Installation loft = Shipped.read(Path.of("..", "scenarios", "loft-reservoir", "as-drawn.json"));

    List<StoryEvent> story =
        Trial.after(loft, FailureCatalogue.find(loft, "parts-at-lowest-point.return").orElseThrow())
            .story();

    StoryEvent wet = first(story, What.FLOOR_WET);
    StoryEvent backwards = first(story, What.RUNS_BACKWARDS);
    assertThat(backwards.other()).isEqualTo(wet.subject());
    assertThat(backwards.time()).isEqualTo(wet.time());
    assertThat(story.indexOf(wet)).isGreaterThan(story.indexOf(backwards));
  }

  @Test
  void waterThatRunsOnOverASillWetsOneFloorAfterTheOther() {
    StoryEvent spills = event(5, What.SPILLS, "vat", "hall");
    StoryEvent hall = event(5, What.FLOOR_WET, "hall", "");
    StoryEvent sill = event(5, What.SILL_REACHED, "hall", "yard");
    StoryEvent yard = event(5, What.FLOOR_WET, "yard", "");

    assertThat(CauseFirst.of(List.of(yard, hall, spills, sill)))
        .containsSubsequence(spills, hall)
        .containsSubsequence(sill, yard);
  }

  @Test
  void whatHappensLaterStaysLater() {
    StoryEvent wet = event(5, What.FLOOR_WET, "hall", "");
    StoryEvent spills = event(5.1, What.SPILLS, "vat", "hall");

    assertThat(CauseFirst.of(List.of(wet, spills))).containsExactly(wet, spills);
  }

  @Test
  void aTubThatAWetFloorFloodsDoesNotWetIt() {
    StoryEvent wet = event(5, What.FLOOR_WET, "hall", "");
    StoryEvent flooded = event(5, What.FLOODED, "tub", "hall");

    assertThat(CauseFirst.of(List.of(wet, flooded))).containsExactly(wet, flooded);
  }

  private static StoryEvent first(List<StoryEvent> story, What what) {
    return story.stream().filter(event -> event.what() == what).findFirst().orElseThrow();
  }

  private static StoryEvent event(double time, What what, String subject, String other) {
    return new StoryEvent(time, what, subject, other, OptionalDouble.empty());
  }
}
