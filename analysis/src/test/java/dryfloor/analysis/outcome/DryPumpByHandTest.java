package dryfloor.analysis.outcome;

import static dryfloor.analysis.installation.Plan.box;
import static dryfloor.analysis.installation.WaterAssert.assertLevel;
import static dryfloor.analysis.installation.WaterAssert.assertReached;
import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.failure.Effect;
import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.installation.Plan;
import dryfloor.analysis.installation.RunPlan;
import dryfloor.analysis.installation.Trial;
import dryfloor.analysis.outcome.StoryEvent.What;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/**
 * A pump that gets only air has no head, so nothing holds up what stands above it.
 *
 * <pre>
 *  display  1 m², bottom at 0.9 m; overflow lip at 600 mm; the return opens at 200 mm, 1.1 m
 *  sump     0.5 m², bottom at −2.95 m; the pump sucks at 40 mm
 *  return   32 mm, 0.804248 L/m: 5 m up to a crest at 1.6 m, 1 m down
 *
 *  All the water: 602 + 0.5 · 200 + 6 · 0.804248 = 706.825 L.
 * </pre>
 */
class DryPumpByHandTest {

  /**
   *
   *
   * <pre>
   * The sump empties in a second; the return then runs backwards through the pump as a siphon,
   * until the display's water bares its outlet at 200 mm. The long leg falls down too, the short
   * one, 0.804 L, into the display d (it keeps what stands up to there):
   *   1000 d + (d − 0.2)/0.5 · 0.804 = 200 + 0.804                d = 0.200803 m
   * On the floor: 706.825 − 200.804 = 506.021 L.
   * </pre>
   */
  @Test
  void whatStandsAbovePumpAndEmptySumpFallsThroughBoth() {
    Outcome outcome = Trial.after(house(r -> {}).draw(), new Failure.WallFails("sump"));

    assertLevel(outcome, "display").isWithin(0.1, 200.803);
    assertReached(outcome, "cellar").isCloseToLitres(506.021);
    assertThat(Trial.happened(outcome, What.SUCKS_AIR, "pump")).isTrue();
    assertThat(Trial.happened(outcome, What.STOPS, "pump")).as("it runs on, dry").isFalse();
  }

  /**
   *
   *
   * <pre>
   * The display keeps what its overflow lip leaves it, 600.0 L; pump and check valve keep the
   * return's 4.825 L. The rest, 706.825 − 604.825 = 102.000 L, reaches the floor.
   * </pre>
   */
  @Test
  void aCheckValveHoldsItUp() {
    Outcome outcome =
        Trial.after(house(r -> r.checkValve("check", 0.3)).draw(), new Failure.WallFails("sump"));

    assertLevel(outcome, "display").isWithin(0.1, 600);
    assertReached(outcome, "cellar").isWithin(0.15, 102.0);
  }

  /**
   *
   *
   * <pre>
   * A seam of 0.2 cm² at the bottom of the sump takes 0.6 · 2e-5 · √(2 g · 0.04) = 1.1e-5 m³/s, 38 L
   * an hour, with the water at the pump's inlet: there it rests for hours, and from above comes
   * what the seam takes. In the end as much is gone as through the open wall.
   * </pre>
   */
  @Test
  void aSeamBelowThePumpGetsAllThatStandsAboveInTheEnd() {
    Outcome outcome = Trial.after(house(r -> {}).draw(), new Failure.SeamLeaks("sump"));

    assertLevel(outcome, "display").isWithin(0.1, 200.803);
    assertReached(outcome, "cellar").isCloseToLitres(506.021);
    assertThat(outcome.trajectory().moments()).as("hours at the inlet").isLessThan(700);
  }

  /**
   *
   *
   * <pre>
   * No water comes down any more, and the sump is tight: what falls back would cover the inlet
   * again and be lifted again. The pump holds the display up, with the sump at its inlet:
   *   706.825 − 4.825 − 0.5 · 40 = 682.000 L in a display of 1 m², rim at 700 mm.
   * </pre>
   */
  @Test
  void aTightSumpLeavesThePumpHoldingWhatItLifted() {
    Outcome outcome =
        Trial.after(house(r -> {}).draw(), new Failure.RunClogs("overflow", Failure.Degree.FULLY));

    assertThat(outcome.verdict()).isEqualTo(Verdict.DRY);
    assertLevel(outcome, "display").isWithin(0.15, 682);
    assertLevel(outcome, "sump").isWithin(0.15, 40);
  }

  /**
   *
   *
   * <pre>
   * 60 L poured into the dry sump ten minutes after its outflow was stopped: the pump finds water
   * again and lifts all but what stands up to its inlet.
   * </pre>
   */
  @Test
  void aPumpThatFindsWaterAgainLiftsIt() {
    Outcome outcome =
        Trial.changing(
            house(r -> {}).draw(),
            new Effect.RunNarrowed("overflow", 0),
            new Effect.Poured("sump", 0.01, 600));

    assertLevel(outcome, "display").isWithin(0.15, 692);
    assertLevel(outcome, "sump").isWithin(0.15, 40);
  }

  /**
   *
   *
   * <pre>
   * A skimmer's pump sucks 20 mm above the return pump's inlet, and its run ends in the same sump.
   * As the sump falls through its inlet by what the seam takes, some 45 L an hour, it loses its hold
   * and lifts again with every cupful that comes back: that is followed through without stepping
   * from gulp to gulp, and ends with the sump empty.
   * </pre>
   */
  @Test
  void aPumpThatCirculatesAtItsInletComesThroughIt() {
    Plan plan =
        house(r -> {})
            .run(
                "skimmer-line",
                r ->
                    r.from("sump", 0.06)
                        .to("sump", 0.19)
                        .bore(0.04)
                        .length(2)
                        .by(-2.5, 1)
                        .pump("skimmer-pump", 0.1, "main", 0, 2, 1.33, 0));

    Outcome outcome = Trial.after(plan.draw(), new Failure.SeamLeaks("sump"));

    assertLevel(outcome, "sump").isWithin(0.1, 0);
    assertThat(outcome.trajectory().moments()).isLessThan(1500);
  }

  private static Plan house(Consumer<RunPlan> more) {
    return Plan.of("Dry pump")
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
            r -> {
              r.from("sump", 0.04).to("display", 0.2).length(6).by(1.6, 5);
              r.pump("pump", 0.1, "main", 0, 6.5, 1, 5.6, 2, 3);
              more.accept(r);
            });
  }
}
