package dryfloor.analysis.simulation;

import static dryfloor.analysis.installation.Plan.box;
import static dryfloor.analysis.installation.WaterAssert.assertLevel;
import static dryfloor.analysis.installation.WaterAssert.vessel;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.analysis.failure.Effect;
import dryfloor.analysis.installation.Plan;
import dryfloor.analysis.installation.Trial;
import dryfloor.analysis.outcome.Outcome;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Two vessels whose levels come together, through a hole and over a weir. */
class JoinedVesselsTest {

  @Test
  void twoTanksJoinedByAHoleStandLevelAtLast() {
    // Tanks of 8 and 4 m², 0.30 m apart: 8 · 0.3 = 12 · 0.2 above the second tank's first level.
    Plan plan =
        ground()
            .vessel("first", box(4, 2, 3), v -> v.in("yard").level(2.3).fresh())
            .vessel("second", box(2, 2, 3), v -> v.in("yard").level(2.0).fresh());

    Outcome outcome =
        Trial.changing(plan.draw(), new Effect.VesselLeaks("first", 0.5, 0.01, "second"));

    assertLevel(outcome, "first").isWithin(0.1, 2200);
    assertLevel(outcome, "second").isWithin(0.1, 2200);
  }

  @Test
  void aDrownedWeirLetsTwoChambersStandLevel() {
    // Chambers of 0.4 m² and 0.2 m² stand at their baffle of 300 mm; 30 L poured into the first
    // raise both by 30/600 m.
    Plan plan = chambers(0.3);

    Outcome outcome = Trial.changing(plan.draw(), new Effect.Poured("first", 0.03, 10));

    assertLevel(outcome, "first").isWithin(0.1, 350);
    assertLevel(outcome, "second").isWithin(0.1, 350);
  }

  @Test
  void aFreeWeirHoldsBackWhatStandsBelowItsCrest() {
    // The second chamber has room for 200 · 0.1 = 20 L below the crest. 8 L poured into the first
    // all go over, and the first is back at its crest.
    Plan plan = chambers(0.2);

    Outcome outcome = Trial.changing(plan.draw(), new Effect.Poured("first", 0.008, 10));

    assertLevel(outcome, "first").isWithin(0.1, 300);
    assertLevel(outcome, "second").isWithin(0.1, 240);
  }

  @Test
  void aChamberBehindADrownedBaffleKeepsItsCrestWhenTheOtherRunsOut() {
    // Both stand 50 mm over the baffle and fall together as the second slowly leaks; the first
    // stops at the crest, the second runs empty.
    Plan plan = chambers(0.3);

    Outcome outcome =
        Trial.changing(
            plan.draw(),
            new Effect.Poured("first", 0.03, 10),
            new Effect.VesselLeaks("second", 0, 5e-6, "yard"));

    assertLevel(outcome, "first").isWithin(0.1, 300);
    assertLevel(outcome, "second").isWithin(0.1, 0);
  }

  /**
   * Two tanks of 0.01 m² fall together, joined by a pipe at 50 mm, while the second leaks. Neither
   * a slow leak nor a fast one draws water out of the first that does not stand above its opening.
   */
  @ParameterizedTest
  @ValueSource(doubles = {1, 2, 5, 10, 15, 20, 30, 50, 100, 200})
  void aTankKeepsWhatStandsBelowTheOpeningOfItsPipe(double squareMillimetres) {
    Plan plan =
        ground()
            .vessel("first", box(0.1, 0.1, 0.5), v -> v.in("yard").level(0.3))
            .vessel("second", box(0.1, 0.1, 0.5), v -> v.in("yard").level(0.3))
            .run("balance", r -> r.from("first", 0.05).to("second", 0.05).bore(0.023).length(0.3));

    Outcome outcome =
        Trial.changing(
            plan.draw(), new Effect.VesselLeaks("second", 0, 1e-6 * squareMillimetres, "yard"));

    assertLevel(outcome, "first").isWithin(0.02, 50);
    assertLevel(outcome, "second").isWithin(0.02, 0);
  }

  private static Plan chambers(double secondLevel) {
    return ground()
        .vessel("first", box(0.8, 0.5, 0.5), v -> v.in("yard").level(0.3).fresh())
        .vessel("second", box(0.4, 0.5, 0.5), v -> v.in("yard").level(secondLevel).fresh())
        .weir("baffle", "first", "second", 0.3, 0.5);
  }

  @Test
  void overAWeirStandsTheHeadOfRehbock() {
    // Rehbock as in ISO 1438 (form from memory): Q = 2/3 (0.602 + 0.083 h/P) √(2g) b h^1.5. With
    // h = 20 mm, P = 300 mm, b = 0.5 m: Cd = 0.60753 and Q = 2.53669 L/s.
    Plan plan =
        ground()
            .vessel("first", box(0.8, 0.5, 0.5), v -> v.in("yard").level(0.3).fresh())
            .vessel("second", box(0.4, 0.5, 0.5), v -> v.in("yard").level(0.1).fresh())
            .weir("baffle", "first", "second", 0.3, 0.5)
            .source("source", 1, 2.53669e-3)
            .run("inlet", r -> r.fromSupply("source").to("first", 0.45))
            .drain("sewer", -1)
            .run("outlet", r -> r.from("second", 0).toDrain("sewer").bore(0.08));

    Outcome outcome = Trial.normal(plan.draw());

    assertThat(vessel(outcome, "first").levelAfter()).isCloseTo(0.32, within(1e-5));
  }

  @Test
  void aDrownedWeirTakesTheHeadOfVillemonte() {
    // Villemonte, Engineering News-Record, 25 December 1947, p. 866 (seen quoted): with 50 mm
    // above the crest below the weir and 60 mm above it, the flow is that of a free weir times
    // (1 − (50/60)^1.5)^0.385. Rehbock's free flow at 60 mm, P = 300 mm, b = 0.2 m:
    // Cd = 0.602 + 0.083 · 0.2 = 0.6186, Q = 2.952460 · 0.6186 · 0.2 · 0.06^1.5 = 5.368474 L/s.
    // (50/60)^1.5 = 0.7607258, 0.2392742^0.385 = 0.5766004, so 3.095464 L/s pass. The standpipe
    // below keeps its level by its own lip: ring weir 1.84 π D h^1.5 (Francis' constant) with
    // D = 0.3 m passes that at h = (3.095464e-3 / 1.734159)^(2/3) = 14.715 mm.
    Plan plan =
        ground()
            .vessel("first", box(0.8, 0.5, 0.5), v -> v.in("yard").level(0.3).fresh())
            .vessel("second", box(0.8, 0.5, 0.5), v -> v.in("yard").level(0.3).fresh())
            .weir("baffle", "first", "second", 0.3, 0.2)
            .source("source", 1, 3.095464e-3)
            .run("inlet", r -> r.fromSupply("source").to("first", 0.45))
            .drain("sewer", -1)
            .run("outlet", r -> r.fromLip("second", 0.35 - 0.014715).toDrain("sewer").bore(0.3));

    Outcome outcome = Trial.normal(plan.draw());

    assertThat(vessel(outcome, "second").levelAfter()).isCloseTo(0.35, within(2e-5));
    assertThat(vessel(outcome, "first").levelAfter()).isCloseTo(0.36, within(2e-5));
  }

  private static Plan ground() {
    return Plan.of("Two vessels").storey("ground", 0).floor("yard", 1e6);
  }
}
