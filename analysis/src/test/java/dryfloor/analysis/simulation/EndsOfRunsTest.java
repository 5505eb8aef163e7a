package dryfloor.analysis.simulation;

import static dryfloor.analysis.installation.Plan.box;
import static dryfloor.analysis.installation.WaterAssert.carried;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import dryfloor.analysis.failure.Effect;
import dryfloor.analysis.installation.Plan;
import dryfloor.analysis.installation.Trial;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.model.element.Fitting;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/**
 * What entrance and exit cost where a junction lies between them. Two ponds whose levels stand,
 * joined by a riser and an outlet of no length to speak of, so that the ends are all there is.
 *
 * <pre>
 * 1 m between the ponds, 50 mm throughout, 0.5 + 1 velocity heads:
 *   1.9635e-3 · √(2 g · 1/1.5)               = 7.100 L/s
 * a riser that stands into the water, 0.78 + 1:
 *   1.9635e-3 · √(2 g · 1/1.78)              = 6.518 L/s
 * an outlet of 40 mm, its area 1.2566e-3 m²:
 *   √(2 g · 1/(0.5/1.9635e-3² + 1/1.2566e-3²)) = 5.070 L/s
 * </pre>
 */
class EndsOfRunsTest {

  private static final double AWAY = 100;

  @Test
  void anEntranceCostsItsHalfHeadThoughTheOtherEndMeetsATee() {
    assertThat(flow(ponds(3, 2, 0.05, Optional.empty()), "high", "tee"))
        .isCloseTo(7.100e-3, withPercentage(0.1));
    assertThat(flow(ponds(3, 2, 0.05, Optional.of(Fitting.SHARP_ENTRANCE)), "high", "tee"))
        .isCloseTo(7.100e-3, withPercentage(0.1));
  }

  @Test
  void aPipeThatStandsIntoTheWaterCostsAllOfItsOwnEntrance() {
    assertThat(flow(ponds(3, 2, 0.05, Optional.of(Fitting.PROTRUDING_ENTRANCE)), "high", "tee"))
        .isCloseTo(6.518e-3, withPercentage(0.1));
  }

  @Test
  void entranceAndExitEachCostTheirShareOfTheirOwnVelocityHead() {
    assertThat(flow(ponds(3, 2, 0.04, Optional.empty()), "high", "tee"))
        .isCloseTo(5.070e-3, withPercentage(0.1));
  }

  /** Water that enters by the exit and leaves by the entrance loses the same in sum. */
  @Test
  void waterThatGoesBackThroughATeeLosesAsMuch() {
    assertThat(flow(ponds(2, 3, 0.05, Optional.empty()), "tee", "high"))
        .isCloseTo(7.100e-3, withPercentage(0.1));
  }

  /**
   * The riser, parted at its end, pours out at 0.5 m, 2.5 m below the pond: 1.9635e-3 · √(2 g ·
   * 2.5/1.5) = 11.226 L/s. It named no exit, for it had none, but the jet takes its velocity along.
   */
  @Test
  void aJetOutOfAPartedPipeTakesItsVelocityHeadAlong() {
    Outcome outcome =
        Trial.changing(
            ponds(3, 2, 0.05, Optional.of(Fitting.SHARP_ENTRANCE)).draw(),
            new Effect.RunParted("riser", 0.001, 0.5, OptionalInt.empty(), "yard"));

    assertThat(carried(outcome, "riser", "high", "yard") / AWAY)
        .isCloseTo(11.226e-3, withPercentage(0.1));
  }

  /** Flow through the riser in normal operation (m³/s). */
  private static double flow(Plan plan, String from, String to) {
    return carried(Trial.normal(plan.draw()), "riser", from, to) / AWAY;
  }

  /** Names an entrance at the riser and an exit at the outlet, or nothing at either. */
  private static Plan ponds(double high, double low, double outlet, Optional<Fitting> entrance) {
    return Plan.of("Two ponds and a tee")
        .away(AWAY)
        .storey("ground", 0)
        .floor("yard", 1e9)
        .vessel("high", box(1e4, 1e4, 9), v -> v.in("yard").level(high).fresh())
        .vessel("low", box(1e4, 1e4, 9), v -> v.in("yard").level(low).fresh())
        .junction("tee", 0.5)
        .run(
            "riser",
            r -> {
              r.from("high", 1).toJunction("tee").bore(0.05).length(0.002);
              entrance.ifPresent(kind -> r.fitting(kind, 1));
            })
        .run(
            "outlet",
            r -> {
              r.fromJunction("tee").to("low", 1).bore(outlet).length(0.002);
              entrance.ifPresent(kind -> r.fitting(Fitting.EXIT, 1));
            });
  }
}
