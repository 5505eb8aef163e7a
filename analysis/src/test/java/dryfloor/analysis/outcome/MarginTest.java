package dryfloor.analysis.outcome;

import static dryfloor.analysis.installation.Plan.box;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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
