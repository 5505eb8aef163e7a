package dryfloor.analysis.simulation;

import static dryfloor.analysis.installation.Plan.box;
import static dryfloor.analysis.installation.WaterAssert.carried;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import dryfloor.analysis.installation.Plan;
import dryfloor.analysis.installation.Trial;
import dryfloor.analysis.outcome.Outcome;
import org.junit.jupiter.api.Test;

/**
 * Pipes that meet. The books give friction as a constant, which is entered as a loss; the end at a
 * reservoir, where a pipe begins, counts an entrance of 0.5 by itself, which is taken off again.
 * Reservoirs are so wide that their levels stand, and flows are read from the ledger.
 */
class PipeNetworkTest {

  private static final double AWAY = 100;
  private static final double ENTRANCE = 0.5;
  private static final double FOOT = 0.3048;
  private static final double CUBIC_FOOT = FOOT * FOOT * FOOT;
  private static final double TWO_G = 2 * 9.80665;

  @Test
  void threeReservoirsShareOneJunction() {
    // Munson, Young and Okiishi, Fundamentals of Fluid Mechanics, example 8.14 (seen in a
    // quotation): 100, 20 and 0 ft; 1000, 500 and 400 ft of 1 ft pipe, f = 0.02: 12.5 ft³/s
    // out of A, 2.26 into B, 10.3 into C; 12.506, 2.233 and 10.274 recomputed.
    Outcome outcome =
        Trial.normal(star(FOOT, new double[] {100 * FOOT, 20 * FOOT, 0}, new double[] {20, 10, 8}));

    double fromA = carried(outcome, "pipe-a", "a", "junction") / AWAY / CUBIC_FOOT;
    double intoB = carried(outcome, "pipe-b", "junction", "b") / AWAY / CUBIC_FOOT;
    double intoC = carried(outcome, "pipe-c", "junction", "c") / AWAY / CUBIC_FOOT;
    assertThat(fromA).isCloseTo(12.5, withPercentage(0.5)).isCloseTo(12.506, withPercentage(0.1));
    assertThat(intoB).isCloseTo(2.26, withPercentage(1.5)).isCloseTo(2.233, withPercentage(0.1));
    assertThat(intoC).isCloseTo(10.3, withPercentage(0.5)).isCloseTo(10.274, withPercentage(0.1));
    assertThat(fromA - intoB - intoC).isCloseTo(0, within(1e-9 * fromA));
  }

  @Test
  void theMiddleReservoirTakesItsShare() {
    // Khan, Fluid Mechanics, example 9.12 (seen in a quotation): 135, 120 and 112 m, h = r Q²
    // with r = 0.7594, 36.33 and 8.168 s²/m⁵: 2.116, 0.565 and 1.549 m³/s. In a bore of 1 m the
    // loss coefficient is r · 2g · A².
    double perR = TWO_G * Math.pow(Math.PI / 4, 2);

    Outcome outcome =
        Trial.normal(
            star(
                1,
                new double[] {135, 120, 112},
                new double[] {0.7594 * perR, 36.33 * perR, 8.168 * perR}));

    double fromA = carried(outcome, "pipe-a", "a", "junction") / AWAY;
    double intoB = carried(outcome, "pipe-b", "junction", "b") / AWAY;
    double intoC = carried(outcome, "pipe-c", "junction", "c") / AWAY;
    assertThat(fromA).isCloseTo(2.116, withPercentage(0.2));
    assertThat(intoB).isCloseTo(0.565, withPercentage(0.2));
    assertThat(intoC).isCloseTo(1.549, withPercentage(0.2));
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
  void twoPipesSideBySideEachCarryTheirOwn() {
    // Douglas, Gasiorek and Swaffield, Fluid Mechanics, example 14.3 (seen in a quotation):
    // fall 10 m, 100 m of 50 mm and of 100 mm, Fanning f = 0.008, ends 1.5: 0.0034 and 0.019 m³/s;
    // 0.003398 and 0.019007 recomputed.
    Plan plan =
        Plan.of("Side by side")
            .away(AWAY)
            .storey("ground", 0)
            .floor("yard", 1e9)
            .vessel("high", box(1e4, 1e4, 20), v -> v.in("yard").level(12).fresh())
            .vessel("low", box(1e4, 1e4, 20), v -> v.in("yard").level(2).fresh())
            .run("thin", r -> r.from("high", 0).to("low", 0).bore(0.05).length(0.01).extraLoss(64))
            .run("thick", r -> r.from("high", 0).to("low", 0).bore(0.1).length(0.01).extraLoss(32));

    Outcome outcome = Trial.normal(plan.draw());

    assertThat(carried(outcome, "thin", "high", "low") / AWAY)
        .isCloseTo(0.0034, withPercentage(0.6))
        .isCloseTo(0.003398, withPercentage(0.1));
    assertThat(carried(outcome, "thick", "high", "low") / AWAY)
        .isCloseTo(0.019, withPercentage(0.6))
        .isCloseTo(0.019007, withPercentage(0.1));
  }

  @Test
  void aRingSharesItsFlowSoThatBothWaysRoundCostTheSame() {
    // Schaschke, Worked Examples, example 8.12 (seen in a quotation): ring A-B-C-D of equal
    // pipes, 3 L/s into A, 0.5 L/s into B, 0.9 L/s out of D, the rest out of C. AB carries 1.175,
    // BC 1.675, AD 1.825, DC 0.925 L/s (closed form: the loop equation is linear in Q). Each pipe
    // costs 16 600 Pa at 1 L/s, in 50 mm a loss of 128 velocity heads.
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
    assertThat(ab).isCloseTo(1.175, withPercentage(0.1));
    assertThat(bc).isCloseTo(1.675, withPercentage(0.1));
    assertThat(ad).isCloseTo(1.825, withPercentage(0.1));
    assertThat(dc).isCloseTo(0.925, withPercentage(0.1));
    assertThat(intoA - ab - ad).as("continuity at A").isCloseTo(0, within(3e-9));
    assertThat(ab * ab + bc * bc - ad * ad - dc * dc)
        .as("loop closure, equal pipes")
        .isCloseTo(0, within(1e-4));
  }
}
