package dryfloor.analysis.simulation;

import static dryfloor.analysis.installation.Plan.box;
import static dryfloor.analysis.installation.WaterAssert.carried;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.analysis.installation.Plan;
import dryfloor.analysis.installation.Trial;
import dryfloor.analysis.outcome.Outcome;
import org.junit.jupiter.api.Test;

/**
 * Pipes that meet: nothing is lost where they do, and both ways round cost the same. Friction is a
 * constant loss; the end at a reservoir, where a pipe begins, counts an entrance of 0.5 by itself,
 * which is taken off again. Reservoirs are so wide that their levels stand, and flows are read from
 * the ledger.
 */
class PipeNetworkTest {

  private static final double AWAY = 100;
  private static final double ENTRANCE = 0.5;
  private static final double FOOT = 0.3048;

  @Test
  void whatLeavesOneReservoirArrivesInTheOthers() {
    Outcome outcome =
        Trial.normal(star(FOOT, new double[] {100 * FOOT, 20 * FOOT, 0}, new double[] {20, 10, 8}));

    double fromA = carried(outcome, "pipe-a", "a", "junction");
    double intoB = carried(outcome, "pipe-b", "junction", "b");
    double intoC = carried(outcome, "pipe-c", "junction", "c");
    assertThat(fromA - intoB - intoC).isCloseTo(0, within(1e-9 * fromA));
  }

  /** Reservoirs a, b, c, each with one pipe to a junction below them all. */
  private static dryfloor.model.Installation star(double bore, double[] levels, double[] losses) {
    Plan plan = Plan.of("Three reservoirs").away(AWAY).storey("ground", -5).floor("yard", 1e9);
    plan.junction("junction", -4);
    for (int i = 0; i < 3; i++) {
      String name = String.valueOf((char) ('a' + i));
      double level = levels[i] + 4;
      double loss = losses[i] - ENTRANCE;
      plan.vessel(name, box(10_000, 10_000, 200), v -> v.in("yard").raised(1).level(level).fresh());
      plan.run(
          "pipe-" + name,
          r -> r.from(name, 0).toJunction("junction").bore(bore).length(1e-3).extraLoss(loss));
    }
    return plan.draw();
  }

  @Test
  void aRingSharesItsFlowSoThatBothWaysRoundCostTheSame() {
    // The ring of Schaschke, Worked Examples, example 8.12 (seen in a quotation): A-B-C-D of equal
    // pipes, 3 L/s into A, 0.5 L/s into B, 0.9 L/s out of D, the rest out of C. Each pipe costs
    // 16 600 Pa at 1 L/s, in 50 mm a loss of 128 velocity heads.
    Plan plan =
        Plan.of("Ring")
            .away(AWAY)
            .storey("ground", 0)
            .floor("yard", 1e9)
            .circuit("power")
            .drain("out-c", 0)
            .drain("out-d", 0)
            .source("in-a", 1, 3e-3)
            .source("in-b", 1, 0.5e-3);
    for (String corner : new String[] {"a", "b", "c", "d"}) {
      plan.junction(corner, 0.5);
    }
    for (String side : new String[] {"ab", "bc", "ad", "dc"}) {
      plan.run(
          side,
          r ->
              r.fromJunction(side.substring(0, 1))
                  .toJunction(side.substring(1))
                  .bore(0.05)
                  .length(1e-3)
                  .extraLoss(128));
    }
    plan.run("feed-a", r -> r.fromSupply("in-a").toJunction("a").bore(0.05))
        .run("feed-b", r -> r.fromSupply("in-b").toJunction("b").bore(0.05))
        .run("outlet-c", r -> r.fromJunction("c").toDrain("out-c").bore(0.05).extraLoss(20))
        .run(
            "outlet-d",
            r ->
                r.fromJunction("d")
                    .toDrain("out-d")
                    .bore(0.05)
                    .dosingPump("taker", 0.5, "power", 0.89995, 1000, 0.90005, 0.001));

    Outcome outcome = Trial.normal(plan.draw());

    double ab = carried(outcome, "ab", "a", "b") / AWAY * 1000;
    double bc = carried(outcome, "bc", "b", "c") / AWAY * 1000;
    double ad = carried(outcome, "ad", "a", "d") / AWAY * 1000;
    double dc = carried(outcome, "dc", "d", "c") / AWAY * 1000;
    double intoA = carried(outcome, "feed-a", "in-a", "a") / AWAY * 1000;
    assertThat(intoA - ab - ad).as("continuity at A").isCloseTo(0, within(3e-9));
    assertThat(ab * ab + bc * bc - ad * ad - dc * dc)
        .as("loop closure, equal pipes")
        .isCloseTo(0, within(1e-4));
  }
}
