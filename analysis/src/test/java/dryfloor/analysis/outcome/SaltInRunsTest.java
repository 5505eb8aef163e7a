package dryfloor.analysis.outcome;

import static dryfloor.analysis.installation.Plan.box;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.installation.Plan;
import dryfloor.analysis.installation.Trial;
import org.junit.jupiter.api.Test;

/** The water that stands in a run at the beginning came from what feeds it, and is as salty. */
class SaltInRunsTest {

  @Test
  void whereAllWaterIsOneSalinityItStaysSoThroughJunctions() {
    Plan plan =
        Plan.of("Manifold")
            .storey("ground", 0)
            .floor("room", 50)
            .circuit("main")
            .vessel("display", box(2, 1, 0.8), v -> v.in("room").raised(2).level(0.702))
            .vessel("sump", box(1.5, 0.8, 0.8), v -> v.in("room").level(0.5))
            .junction("lower-tee", 0.6)
            .junction("upper-tee", 1.6)
            .run("drain", r -> r.fromLip("display", 0.7).to("sump", 0.7).bore(0.063).length(2))
            .run(
                "lift",
                r ->
                    r.from("sump", 0.1)
                        .toJunction("lower-tee")
                        .pump("pump", 0.2, "main", 0, 4, 0.5, 3, 1, 0))
            .run("riser", r -> r.fromJunction("lower-tee").toJunction("upper-tee").bore(0.05))
            .run("left", r -> r.fromJunction("upper-tee").to("display", 0.65).length(2))
            .run("right", r -> r.fromJunction("upper-tee").to("display", 0.6).length(3));

    Outcome normal = Trial.normal(plan.draw());
    Outcome stopped = Trial.after(plan.draw(), new Failure.PumpStops("pump"));

    for (Outcome outcome : new Outcome[] {normal, stopped}) {
      for (Outcome.VesselOutcome vessel : outcome.vessels()) {
        assertThat(vessel.salinityAfter()).as(vessel.id()).isCloseTo(35, within(1e-3));
      }
    }
  }
}
