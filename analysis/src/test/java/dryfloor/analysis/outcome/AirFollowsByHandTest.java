package dryfloor.analysis.outcome;

import static dryfloor.analysis.installation.Plan.box;
import static dryfloor.analysis.installation.WaterAssert.assertLevel;
import static dryfloor.analysis.installation.WaterAssert.assertReached;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.installation.Plan;
import dryfloor.analysis.installation.RunPlan;
import dryfloor.analysis.installation.Trial;
import dryfloor.model.element.Control;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/**
 * Water that nothing holds moves on, and air follows it.
 *
 * <pre>
 *  tub   0.5 m², bottom 1 m over the floor, water 200 mm deep: 100 L
 *  loop  32 mm, 0.804248 L/m, 2 m: sucked at 40 mm, thrown back in at 400 mm
 * </pre>
 */
class AirFollowsByHandTest {

  /**
   *
   *
   * <pre>
   * The loop's second end slips off and lies on the floor. Its pump throws out the tub, down to its
   * opening at 40 mm, and gets no more. What is in the hose, all of it below the pump, runs on down
   * by itself: 0.5 · 160 + 2 · 0.804248 = 81.608 L.
   * </pre>
   */
  @Test
  void aHoseOnTheFloorRunsOutOnceItsPumpGetsNoMore() {
    Outcome outcome =
        Trial.after(tub(r -> {}).draw(), new Failure.EndSlipsOut("loop", Failure.End.SECOND));

    assertLevel(outcome, "tub").isWithin(0.1, 40);
    assertReached(outcome, "room").isWithin(0.01, 81.608);
  }

  /**
   *
   *
   * <pre>
   * Half way, 600 mm over the tub's bottom, the outlet of a vessel in the loop clogs and its lid comes
   * open. The pump throws the water out, until a switch stops it with the tub 150 mm deep: 25 L.
   * Then the lid lets air in, and both halves of the loop run back into the tub: a clogged outlet
   * holds nothing up in a pipe of 32 mm that is open below. Of the first half stays what lies below
   * the tub's own level d, of which it reaches from 40 mm to 600 mm:
   *   500 d = 75 + 1.608496 − (d − 0.04)/0.56 · 0.804248               d = 0.152894 m
   * </pre>
   */
  @Test
  void whatWasLiftedToAnOpenLidFallsBackWhenThePumpStops() {
    Plan plan =
        tub(r -> r.skimmer("vessel", 1, 1.6, 0))
            .levelSwitch(
                "low", "tub", 0.15, 0.19, Control.LevelSwitch.Action.STOPS_WHEN_LOW, "pump");

    Outcome outcome = Trial.after(plan.draw(), new Failure.DeviceLidOpens("vessel"));

    assertLevel(outcome, "tub").isWithin(0.02, 152.894);
    assertReached(outcome, "room").isWithin(0.03, 25);
  }

  /**
   *
   *
   * <pre>
   * The same with a hose of 8 mm, 0.050265 L/m, in a tub of 0.01 m²: the half beyond the clogged
   * outlet goes on hanging, no air gets past it. So it is the lid alone that lets air in, and only
   * the first half runs back:
   *   10 d = 1.5 + 0.050265 − (d − 0.04)/0.56 · 0.050265               d = 0.154006 m
   * A quarter of a millilitre, 0.02 mm, stays where the halves meet.
   * </pre>
   */
  @Test
  void aThinHoseKeepsWhatHangsBeyondAClogAndTheLidLetsTheRestFallBack() {
    Plan plan =
        tub(0.1, 0.1, r -> r.bore(0.008).skimmer("vessel", 1, 1.6, 0))
            .levelSwitch(
                "low", "tub", 0.15, 0.19, Control.LevelSwitch.Action.STOPS_WHEN_LOW, "pump");

    Outcome outcome = Trial.after(plan.draw(), new Failure.DeviceLidOpens("vessel"));

    assertLevel(outcome, "tub").isWithin(0.1, 154.006);
    assertReached(outcome, "room").isWithin(0.001, 0.5);
  }

  private static Plan tub(Consumer<RunPlan> more) {
    return tub(1, 0.5, more);
  }

  private static Plan tub(double length, double width, Consumer<RunPlan> more) {
    return Plan.of("Air follows")
        .storey("ground", 0)
        .floor("room", 100)
        .circuit("main")
        .vessel("tub", box(length, width, 0.5), v -> v.in("room").raised(1).level(0.2))
        .run(
            "loop",
            r -> {
              r.from("tub", 0.04).to("tub", 0.4).length(2);
              r.pump("pump", 0.1, "main", 0, 3, 1, 1.5, 2, 0);
              more.accept(r);
            });
  }
}
