package dryfloor.analysis.outcome;

import static dryfloor.analysis.installation.WaterAssert.carried;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.installation.DisplayAboveSump;
import dryfloor.analysis.installation.Plan;
import dryfloor.analysis.installation.Trial;
import dryfloor.model.Installation;
import org.junit.jupiter.api.Test;

/** Levels stand still, and water goes on going round until somebody comes. */
class WhatGoesRoundTest {

  private static final double AWAY = 72 * 3600;

  /**
   * 35 g/kg at 25 °C: 1023.2 kg/m³ (TEOS-10; from memory), so 35.81 kg of salt in each m³, still or
   * moving.
   */
  @Test
  void waterAndSaltAreCountedOverTheSameTime() {
    Outcome outcome = Trial.after(DisplayAboveSump.asDrawn(), new Failure.CircuitTrips("skimming"));

    assertThat(outcome.ledger().until()).isEqualTo(AWAY);
    assertThat(outcome.ledger().entries())
        .allSatisfy(
            entry ->
                assertThat(entry.salt()).isCloseTo(35.81 * entry.volume(), withPercentage(0.02)));
  }

  /** A dosing pump of 0.1 L/s lifts 25 920 L in 72 h, and as much comes down again. */
  @Test
  void whatGoesRoundIsCountedForAllTheTime() {
    Installation installation =
        Plan.of("Round")
            .storey("ground", 0)
            .floor("room", 20)
            .circuit("main")
            .circuit("other")
            .vessel("low", Plan.box(1, 0.5, 0.6), v -> v.in("room").level(0.3))
            .vessel("high", Plan.box(1, 0.5, 0.6), v -> v.in("room").raised(1.5).level(0.4))
            .run(
                "lift",
                r ->
                    r.from("low", 0.05)
                        .to("high", 0.55)
                        .length(3)
                        .dosingPump("pump", 0.2, "main", 0, 1000, 0.1, 999, 0.1001, 0))
            .run("drain", r -> r.fromLip("high", 0.4).to("low", 0.5).bore(0.05).length(1.5))
            .circulationPump("wave", "high", 0.1, 1e-3, "other")
            .draw();

    Outcome outcome = Trial.after(installation, new Failure.CircuitTrips("other"));

    assertThat(carried(outcome, "lift", "low", "high")).isCloseTo(25.92, withPercentage(0.2));
    assertThat(carried(outcome, "drain", "high", "low") + carried(outcome, "drain", "drain", "low"))
        .isCloseTo(25.92, withPercentage(0.2));
    assertThat(outcome.vessels())
        .allMatch(vessel -> Math.abs(vessel.levelAfter() - vessel.levelBefore()) < 1e-5);
  }
}
