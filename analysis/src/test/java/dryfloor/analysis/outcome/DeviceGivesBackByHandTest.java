package dryfloor.analysis.outcome;

import static dryfloor.analysis.installation.Plan.box;
import static dryfloor.analysis.installation.WaterAssert.assertLevel;
import static dryfloor.analysis.installation.WaterAssert.assertReached;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.installation.Plan;
import dryfloor.analysis.installation.Trial;
import dryfloor.model.Installation;
import org.junit.jupiter.api.Test;

/**
 * A skimmer keeps its water only as long as its pump gives it more.
 *
 * <pre>
 *  sump     0.5 m², water 200 mm deep: 100 L
 *  skimmer  32 mm, 1 m, from 100 mm to 400 mm above the sump's bottom: 0.804 L; keeps 6 L, half way
 * </pre>
 */
class DeviceGivesBackByHandTest {

  @Test
  void itsWaterGoesTheWayOfTheSumpThatIsLost() {
    // 100 + 0.804 + 6 L.
    Outcome outcome = Trial.after(house(), new Failure.WallFails("sump"));

    assertReached(outcome, "room").isCloseToLitres(106.804);
  }

  @Test
  void itsWaterRunsOutWhereItsConnectionLetsGo() {
    // The pump throws 50 L out of the sump, down to its inlet at 100 mm, and holds its half of the
    // pipe up. The skimmer runs out behind it, and with it the other half of the pipe, 0.402 L.
    Outcome outcome = Trial.after(house(), new Failure.DeviceConnectionLetsGo("skimmer"));

    assertLevel(outcome, "sump").isWithin(0.1, 100);
    assertReached(outcome, "room").isWithin(0.06, 56.402);
  }

  @Test
  void itsWaterRunsOutOfTheEndThatSlippedOntoTheFloor() {
    // The pump sucks air from the floor at once. The skimmer and the upper part of its pipe fall
    // back through it and out of the end on the floor.
    Outcome outcome =
        Trial.after(house(), new Failure.EndSlipsOut("skimmer-line", Failure.End.FIRST));

    assertLevel(outcome, "sump").isWithin(0.1, 200);
    assertReached(outcome, "room").isWithin(0.02, 6.804);
  }

  private static Installation house() {
    return Plan.of("Skimmer")
        .storey("ground", 0)
        .floor("room", 100)
        .circuit("main")
        .vessel("sump", box(1, 0.5, 0.5), v -> v.in("room").raised(0.05).level(0.2))
        .run(
            "skimmer-line",
            r ->
                r.from("sump", 0.1)
                    .to("sump", 0.4)
                    .pump("skimmer-pump", 0.1, "main", 0, 1.5, 0.3, 0)
                    .skimmer("skimmer", 0.5, 0.6, 0.006))
        .draw();
  }
}
