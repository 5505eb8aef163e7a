package dryfloor.analysis.outcome;

import static dryfloor.analysis.installation.Plan.box;
import static dryfloor.analysis.installation.WaterAssert.assertLevel;
import static dryfloor.analysis.installation.WaterAssert.assertReached;
import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.installation.Plan;
import dryfloor.analysis.installation.Trial;
import dryfloor.analysis.outcome.StoryEvent.What;
import dryfloor.model.Installation;
import dryfloor.model.part.Part;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Where a hole in the open air stops a siphon: at its own height, not at the crest above it.
 *
 * <pre>
 *  display  1 m², bottom at 0.9 m; water to 1.502 m, overflow lip at 1.5 m; return outlet at 1.0 m
 *  sump     0.5 m², rim at −2.35 m
 *  return   32 mm, 0.804248 L/m: 5 m up to a crest at 1.6 m, 1 m down to its outlet
 *
 *  All the water: 602 + 0.5 · 200 + 6 · 0.804248 = 706.825 L.
 * </pre>
 */
class SiphonBreakByHandTest {

  private static final Failure POWER_LOST = new Failure.BuildingLosesPower();

  /**
   *
   *
   * <pre>
   * The hole at 1.2 m lies below the water, whether in the riser (4.2 m along) or beyond the crest
   * (5.7 m along): the display stands over it and pushes its water, and whatever air the hole takes
   * in, over the crest, until it has fallen to 1.2 m. Then the short leg's 0.804 L fall into it, all
   * but what stands in it up to the display's water d (above the display's bottom):
   *   1000 d + (d − 0.1)/0.6 · 0.804248 = 300 + 0.804248              d = 0.300535 m
   * The sump holds 0.5 · 600 = 300 L; all the rest but what stands in the short leg, 0.269 L, in
   * the overflow's foot and in the riser up to the rim, (5 m over 4.51 m, 0.56 m of it under the
   * rim) 0.499 L, and in the overflow pipe (75 mm, 4 m over 4.05 m, 0.2 m of it under the rim)
   * 0.873 L, goes over its rim:
   *   706.825 − 300.535 − 0.269 − 300 − 0.499 − 0.873 = 104.65 L
   * </pre>
   */
  @ParameterizedTest
  @ValueSource(doubles = {4.2, 5.7})
  void aHoleBelowTheWaterLetsTheSiphonRunDownToIt(double along) {
    Outcome outcome = Trial.after(house(1.2, along), POWER_LOST);

    assertThat(outcome.verdict()).isEqualTo(Verdict.WET);
    assertLevel(outcome, "display").isWithin(0.1, 300.535);
    assertReached(outcome, "cellar").isWithin(0.1, 104.65);
    assertThat(Trial.happened(outcome, What.SIPHON_BREAKS, "hole")).isTrue();
  }

  @Test
  void aHoleAboveTheWaterStopsTheSiphonAtOnce() {
    // 1.55 m is 50 mm above the water, which falls to its overflow lip at 600 mm.
    Outcome outcome = Trial.after(house(1.55, 5.1), POWER_LOST);

    assertThat(outcome.verdict()).isEqualTo(Verdict.DRY);
    assertLevel(outcome, "display").isWithin(0.1, 600);
  }

  private static Installation house(double hole, double along) {
    return Plan.of("Siphon break")
        .storey("cellar-storey", -3)
        .floor("cellar", 100)
        .storey("ground", 0)
        .floor("hall", 100)
        .circuit("main")
        .vessel("display", box(1, 1, 0.7), v -> v.in("hall").raised(0.9).level(0.602))
        .vessel("sump", box(1, 0.5, 0.6), v -> v.in("cellar").raised(0.05).level(0.2))
        .run("overflow", r -> r.fromLip("display", 0.6).to("sump", 0.4).bore(0.075).length(4))
        .run(
            "return",
            r ->
                r.from("sump", 0.04)
                    .to("display", 0.1)
                    .length(6)
                    .by(1.6, 5)
                    .pump("pump", 0.1, "main", 0, 6.5, 1, 5.6, 2, 3)
                    .parts(
                        new Part.SiphonBreak(
                            "hole", "hole", along, hole, 0.008, 1, Optional.empty())))
        .draw();
  }
}
