package dryfloor.analysis.outcome;

import static dryfloor.analysis.installation.Plan.box;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.analysis.failure.Effect;
import dryfloor.analysis.installation.Plan;
import dryfloor.analysis.installation.Trial;
import org.junit.jupiter.api.Test;

/** Which vessel the margin names. */
class MarginTest {

  /**
   * Two tanks, each filled to 160 mm below its rim: neither is closer, whichever is drawn first.
   */
  @Test
  void ofTwoVesselsAsFullAsEachOtherTheFirstByIdIsNamedWhateverTheOrderOfTheFile() {
    assertThat(marginOf("left", "right").vessel()).hasValue("left");
    assertThat(marginOf("right", "left").vessel()).hasValue("left");
    assertThat(marginOf("right", "left").freeboard()).isCloseTo(0.16, within(1e-9));
  }

  /**
   * 30 L poured into a still tank of 0.2 m² raise it by 150 mm at once: of 160 mm below its rim 10
   * are left, although nothing flows before or after.
   */
  @Test
  void waterPouredIntoAStillTankCountsForItsMargin() {
    Outcome outcome =
        Trial.changing(
            Plan.of("Still tank")
                .storey("ground", 0)
                .floor("room", 20)
                .vessel("tank", box(0.5, 0.4, 0.5), v -> v.in("room").level(0.34))
                .draw(),
            new Effect.Poured("tank", 0.03, 0));

    assertThat(outcome.margin().freeboard()).isCloseTo(0.01, within(1e-6));
  }

  private static Outcome.Margin marginOf(String drawnFirst, String drawnSecond) {
    return Trial.normal(
            Plan.of("Two tanks")
                .storey("ground", 0)
                .floor("room", 20)
                .vessel(drawnFirst, box(0.5, 0.4, 0.5), v -> v.in("room").level(0.34))
                .vessel(drawnSecond, box(0.5, 0.4, 0.5), v -> v.in("room").level(0.34))
                .draw())
        .margin();
  }
}
