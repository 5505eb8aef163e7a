package dryfloor.analysis.simulation;

import static dryfloor.analysis.installation.Plan.box;
import static dryfloor.analysis.installation.WaterAssert.carried;
import static dryfloor.analysis.installation.WaterAssert.vessel;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import dryfloor.analysis.installation.Plan;
import dryfloor.analysis.installation.Trial;
import dryfloor.analysis.outcome.Outcome;
import org.junit.jupiter.api.Test;

/** How far a crest may stand, and what stands over an upright overflow. */
class CrestAndOverflowTest {

  private static final double AWAY = 100;

  @Test
  void aCrestWithinReachOfTheAirKeepsItsFlow() {
    // The siphon of Douglas, Gasiorek and Swaffield, example 14.1 (seen in a quotation), its crest
    // raised: 100 mm, 4 f L/D = 48 spread over it, fall 4 m, 1.2591 m/s. With its losses the water
    // at the crest hangs 1.41 m deeper than at rest (−28.61 kPa at 1.5 m are 1.5 + 1.42 m). At
    // 25 °C air holds (101 325 − 3169)/(997.05 g) = 10.04 m of fresh water (vapour pressure: IAPWS
    // R7-97). A crest at 8.5 m needs 9.92 m.
    assertThat(flowOverCrest(8.5) / (Math.PI / 4 * 0.01)).isCloseTo(1.2591, withPercentage(0.1));
  }

  @Test
  void aCrestBeyondReachOfTheAirCarriesLess() {
    // 8.75 m needs 10.16 m, more than the air can hold.
    assertThat(flowOverCrest(8.75) / (Math.PI / 4 * 0.01)).isLessThan(1.25);
  }

  @Test
  void aCrestHigherThanTheAirHoldsCarriesNothing() {
    // Munson, Young and Okiishi, example 3.10, energy balance at rest: 10.04 m at 25 °C.
    assertThat(flowOverCrest(10.2)).isZero();
  }

  private static double flowOverCrest(double aboveWater) {
    Plan plan =
        Plan.of("Siphon")
            .away(AWAY)
            .storey("ground", 0)
            .floor("yard", 1e9)
            .vessel("high", box(1e4, 1e4, 20), v -> v.in("yard").level(8).fresh())
            .vessel("low", box(1e4, 1e4, 20), v -> v.in("yard").level(4).fresh())
            .run(
                "siphon",
                r ->
                    r.from("high", 3)
                        .to("low", 2)
                        .bore(0.1)
                        .length(0.15)
                        .extraLoss(48)
                        .by(8 + aboveWater, 0.05));
    return carried(Trial.normal(plan.draw()), "siphon", "high", "low") / AWAY;
  }

  @Test
  void anUprightOverflowIsAWeirAtFirst() {
    // Ring weir with Francis' constant (Encyclopaedia Britannica, weirs; seen): Q = 1.84 π D h^1.5.
    // 8.111 L/min is what 32 mm carries with air passing beside it (Hills 1983, Froude number 0.3):
    // h = (1.3518e-4 / 0.184976)^(2/3) = 8.112 mm.
    assertThat(headOverLip(0.032, 8.1109520873e-3 / 60)).isCloseTo(8.112e-3, within(5e-6));
  }

  @Test
  void anUprightOverflowIsAnOrificeWhenDeeper() {
    // National Standard Plumbing Code (2006), table 13.6.1 (seen): a 2 in leader is allowed
    // 23 US gal/min as a film on its wall. To take that in, its mouth needs
    // h = (Q/(0.61 A))²/2g = (1.45107e-3 / (0.61 · 2.02683e-3))²/2g = 70.23 mm: the mouth, not the
    // pipe, sets the level.
    assertThat(headOverLip(0.0508, 23 * 3.785411784e-3 / 60)).isCloseTo(70.23e-3, within(2e-5));
  }

  private static double headOverLip(double bore, double flow) {
    Plan plan =
        Plan.of("Overflow")
            .storey("ground", 0)
            .floor("yard", 1e6)
            .vessel("tank", box(1, 0.5, 1), v -> v.in("yard").raised(3).level(0.8).fresh())
            .source("source", 5, flow)
            .run("inlet", r -> r.fromSupply("source").to("tank", 0.95))
            .drain("sewer", 0)
            .run("standpipe", r -> r.fromLip("tank", 0.8).toDrain("sewer").bore(bore).length(3.8));
    Outcome outcome = Trial.normal(plan.draw());
    return vessel(outcome, "tank").levelAfter() - vessel(outcome, "tank").bottom() - 0.8;
  }
}
