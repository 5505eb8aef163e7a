package dryfloor.analysis.outcome;

import static dryfloor.analysis.installation.Plan.box;
import static dryfloor.analysis.installation.WaterAssert.assertLevel;
import static dryfloor.analysis.installation.WaterAssert.assertLitresOn;
import static dryfloor.analysis.installation.WaterAssert.assertSalinity;
import static dryfloor.model.element.Control.LevelSwitch.Action.FILLS;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.installation.DisplayAboveSump;
import dryfloor.analysis.installation.InTurn;
import dryfloor.analysis.installation.Plan;
import dryfloor.analysis.installation.Trial;
import dryfloor.analysis.installation.WaterAssert;
import dryfloor.analysis.outcome.StoryEvent.What;
import dryfloor.model.Installation;
import dryfloor.model.element.Control;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Events one after the other, worked out by hand; the sums are those of PowerLossByHandTest. */
class SequenceByHandTest {

  private static final double MINUTE = 60;
  private static final double HOUR = 3600;
  private static final double DAY = 86_400;
  private static final String POWER = "power-lost.building";

  /**
   *
   *
   * <pre>
   * 10 L are poured in while the pumps stand still, power comes back and is lost again. The display
   * drains to its siphon break as ever, 737.261 L with what stands in the return's short leg, so
   * 990.506 − 737.261 = 253.246 L stand below:
   *   700 z + 0.402 + (z − 0.05)/4.48 · 3.6191 + (z − 0.1)/0.3 · 0.80425 = 253.246
   *   703.4887 z = 253.1522                                    z = 0.359853 m
   * </pre>
   */
  @Test
  void whatIsPouredInDuringOneCutStandsHigherInTheNext() {
    Outcome outcome =
        InTurn.in(DisplayAboveSump.asDrawn())
            .begins(0, POWER)
            .pours(20 * MINUTE, "chamber", 0.010)
            .ends(HOUR, POWER)
            .begins(3 * HOUR, POWER)
            .happen();

    assertThat(outcome.verdict()).isEqualTo(Verdict.DRY);
    assertLevel(outcome, "display").isWithin(0.1, 585.105);
    assertLevel(outcome, "sump").isWithin(0.1, 359.853);
    assertLevel(outcome, "chamber").isWithin(0.1, 359.853);
  }

  /**
   *
   *
   * <pre>
   * A water change beside a top-off that nobody switched off. The tank has 1 m² and stands at
   * 500 mm, 35 g/kg; 60 L are taken out. At 440 mm the switch calls for fresh water until 500 mm
   * are reached again: 60 L out of a store of 0.5 m² at 350 mm, which falls to 230 mm. Then 60 L
   * of salt water are poured back:
   *   500 + 60 = 560 mm, that much too high    35 · (440 + 60) / 560 = 31.25 g/kg
   * </pre>
   */
  @Test
  void aWaterChangeBesideARunningTopOffEndsTooHighByWhatWasChanged() {
    Outcome outcome =
        InTurn.in(toppedOff())
            .takes(HOUR, "tank", 0.060, 0)
            .pours(4 * HOUR, "tank", 0.060, 35)
            .happen();

    assertLevel(outcome, "tank").isWithin(0.2, 560);
    assertLevel(outcome, "store").isWithin(0.4, 230);
    assertSalinity(outcome, "tank").isWithin(0.01, 31.25);
    assertThat(Trial.timeOf(outcome, What.TAKEN, "tank")).isEqualTo(HOUR);
    assertThat(taken(outcome, "tank")).isCloseTo(0.060, within(1e-9));
  }

  /** Without power for the top-off meanwhile, all is as it was, and no salt is lost. */
  @Test
  void aWaterChangeWithTheTopOffWithoutPowerChangesNothing() {
    Outcome outcome =
        InTurn.in(toppedOff())
            .begins(0, POWER)
            .takes(HOUR, "tank", 0.060, 0)
            .pours(4 * HOUR, "tank", 0.060, 35)
            .ends(5 * HOUR, POWER)
            .happen();

    assertLevel(outcome, "tank").isWithin(1e-3, 500);
    assertLevel(outcome, "store").isWithin(1e-3, 350);
    assertSalinity(outcome, "tank").isWithin(1e-6, 35);
    assertThat(saltByHand(outcome, Ledger.Way.TAKEN))
        .isPositive()
        .isCloseTo(saltByHand(outcome, Ledger.Way.POURED), within(1e-9));
  }

  /**
   * 600 L are meant, but the hose hangs 100 mm above the bottom of 1 m² at 500 mm: 400 L come, with
   * all the salt that was in them, and a second try finds nothing.
   */
  @Test
  void whatTheHoseCannotReachIsNotTaken() {
    Outcome outcome =
        InTurn.in(toppedOff())
            .begins(0, POWER)
            .takes(HOUR, "tank", 0.600, 0.1)
            .takes(2 * HOUR, "tank", 0.010, 0.2)
            .happen();

    assertLevel(outcome, "tank").isWithin(1e-3, 100);
    assertSalinity(outcome, "tank").isWithin(1e-6, 35);
    assertThat(taken(outcome, "tank")).isCloseTo(0.400, within(1e-9));
    assertThat(
            outcome.story().stream()
                .filter(event -> event.what() == What.TAKEN_IN_PART)
                .map(event -> event.volume().orElseThrow()))
        .satisfiesExactly(
            first -> assertThat(first).isCloseTo(0.400, within(1e-9)),
            second -> assertThat(second).isZero());
    assertThat(Trial.happened(outcome, What.TAKEN, "tank")).isFalse();
  }

  /**
   *
   *
   * <pre>
   * 30 L are taken out of the return chamber while the pump runs, 20 L are poured back, and then
   * the power is cut. Above, 253.246 L stood below after 10 L more; now it is 10 L less than drawn:
   *   253.246 − 20 = 233.246 L
   *   703.4887 z = 233.246 − 0.402 + 0.0404 + 0.2681 = 233.1525       z = 0.331423 m
   * </pre>
   */
  @Test
  void whatIsTakenWhileTheReturnRunsIsMissingInTheNextCut() {
    Outcome outcome =
        InTurn.in(DisplayAboveSump.asDrawn())
            .takes(HOUR, "chamber", 0.030, 0.05)
            .pours(2 * HOUR, "chamber", 0.020, 35)
            .begins(5 * HOUR, POWER)
            .happen();

    assertThat(outcome.verdict()).isEqualTo(Verdict.DRY);
    assertLevel(outcome, "display").isWithin(0.1, 585.105);
    assertLevel(outcome, "sump").isWithin(0.1, 331.423);
    assertLevel(outcome, "chamber").isWithin(0.1, 331.423);
  }

  /** A tank of 1 m² at 500 mm, kept there by a store of 0.5 m² of fresh water. */
  private static Installation toppedOff() {
    return Plan.of("Top-off")
        .storey("ground", 0)
        .floor("room", 50)
        .circuit("main")
        .vessel("tank", box(1, 1, 0.8), v -> v.in("room").level(0.5))
        .vessel("store", box(1, 0.5, 0.5), v -> v.in("room").level(0.35).fresh())
        .run(
            "top-off",
            r ->
                r.from("store", 0.05)
                    .to("tank", 0.9)
                    .bore(0.008)
                    .length(1.2)
                    .dosingPump("top-off-pump", 0.1, "main", 0, 2, 0.02, 0))
        .levelSwitch("top-off-switch", "tank", 0.49, 0.5, FILLS, "top-off-pump")
        .draw();
  }

  private static double taken(Outcome outcome, String vessel) {
    return WaterAssert.carried(outcome, vessel, vessel, Ledger.OUTSIDE);
  }

  private static double saltByHand(Outcome outcome, Ledger.Way way) {
    return outcome.ledger().entries().stream()
        .filter(entry -> entry.way() == way)
        .mapToDouble(Ledger.Entry::salt)
        .sum();
  }

  @Test
  void powerLostBackAndLostAgainIsPowerLost() {
    Installation house = DisplayAboveSump.asDrawn();
    Outcome once = Trial.after(house, new Failure.BuildingLosesPower());
    Outcome twice =
        InTurn.in(house).begins(0, POWER).ends(HOUR, POWER).begins(2 * HOUR, POWER).happen();

    for (Outcome.VesselOutcome vessel : once.vessels()) {
      assertThat(WaterAssert.vessel(twice, vessel.id()).levelAfter())
          .as(vessel.id())
          .isCloseTo(vessel.levelAfter(), within(1e-4));
    }
    assertThat(twice.ledger().entries().stream().filter(e -> e.path().equals("drain")).count())
        .isEqualTo(1);
  }

  @Test
  void powerLostAndBackIsWhatTheListCallsSo() {
    Installation house = DisplayAboveSump.asDrawn();
    double outage = house.failureSettings().outage();
    Outcome listed = Trial.after(house, new Failure.BuildingLosesPowerForAWhile());
    Outcome written = InTurn.in(house).begins(0, POWER).ends(outage, POWER).happen();

    for (Outcome.VesselOutcome vessel : listed.vessels()) {
      Outcome.VesselOutcome same = WaterAssert.vessel(written, vessel.id());
      assertThat(same.levelAfter()).as(vessel.id()).isCloseTo(vessel.levelAfter(), within(1e-6));
      assertThat(same.highestLevel())
          .as(vessel.id())
          .isCloseTo(vessel.highestLevel(), within(1e-6));
    }
  }

  /**
   * The hole is blocked for a day before anybody notices: the cut drains the display to the
   * return's outlet, 550.127 mm, and raises the sump to 408.356 mm. Cleaned and with power back,
   * the next cut stops at the hole, 585.105 mm and 345.637 mm, as if nothing had been.
   */
  @Test
  void aHoleThatIsCleanedBetweenTwoCutsStopsTheSecond() {
    InTurn blocked =
        InTurn.in(DisplayAboveSump.asDrawn())
            .begins(0, "siphon-break-blocked.siphon-break")
            .begins(DAY, POWER);

    Outcome first = blocked.happen();
    assertLevel(first, "display").isWithin(0.1, 550.127);
    assertLevel(first, "sump").isWithin(0.1, 408.356);

    Outcome second =
        blocked
            .ends(2 * DAY, POWER)
            .ends(2 * DAY, "siphon-break-blocked.siphon-break")
            .begins(3 * DAY, POWER)
            .happen();
    assertLevel(second, "display").isWithin(0.1, 585.105);
    assertLevel(second, "sump").isWithin(0.1, 345.637);
    assertThat(WaterAssert.vessel(second, "sump").highestLevel() - 0.02)
        .as("it stood higher in the first cut")
        .isCloseTo(0.408356, within(5e-4));
  }

  /**
   *
   *
   * <pre>
   * A seam of 20 mm² at the bottom of 0.8 m of water on 1 m², open for an hour (Torricelli):
   *   √h = √0.8 − 0.61 · 20e-6 · √(2 · 9.80665) / 2 · 3600 = 0.894427 − 0.097255 = 0.797172
   *   h = 0.635484 m, so 164.516 L lie on the floor when it is mended, and no more come.
   * </pre>
   */
  @Test
  void aSeamThatIsMendedAfterAnHourLeaksForAnHour() {
    Installation vat =
        Plan.of("Vat")
            .storey("ground", 0)
            .floor("room", 100)
            .vessel("vat", box(1.25, 0.8, 1), v -> v.in("room").raised(0.03).level(0.8).fresh())
            .draw();

    Outcome outcome =
        InTurn.in(vat).begins(HOUR, "seam-leaks.vat").ends(2 * HOUR, "seam-leaks.vat").happen();

    assertLevel(outcome, "vat").isWithin(0.1, 635.484);
    assertLitresOn(outcome, "room").isCloseToLitres(164.516);
    assertThat(outcome.firstWetFloor().orElseThrow()).isCloseTo(HOUR, within(1.0));
    assertThat(outcome.verdict()).isEqualTo(Verdict.WET);
    assertThat(Trial.timeOf(outcome, What.FAILS, "seam-leaks.vat")).isEqualTo(HOUR);
    assertThat(Trial.timeOf(outcome, What.PUT_RIGHT, "seam-leaks.vat")).isEqualTo(2 * HOUR);
    assertThat(outcome.ledger().until()).isEqualTo(2 * HOUR + vat.conditions().away());
  }

  @Test
  void anEventThatTakesTwoHoursToShowIsFollowedForTheUnattendedTimeAfterTheLastOne() {
    Installation house = new DisplayAboveSump().plan().away(HOUR).draw();
    Outcome outcome = InTurn.in(house).begins(5 * HOUR, POWER).happen();

    assertLevel(outcome, "display").isCloseToMillimetres(585.105);
    assertThat(Trial.timeOf(outcome, What.POWER_LOST, "main")).isEqualTo(5 * HOUR);
  }

  /** The union lets go while the pump runs; put together again, the run fills and carries on. */
  @Test
  void aUnionPutTogetherAgainCarriesWaterAgain() {
    Installation house =
        new DisplayAboveSump()
            .returnWith(r -> r.joint("union", 1, 0.55, "plant-room"))
            .plan()
            .draw();
    String parts = "joint-parts.return.union";

    Outcome outcome = InTurn.in(house).begins(HOUR, parts).ends(2 * HOUR, parts).happen();
    Outcome left = InTurn.in(house).begins(HOUR, parts).happen();

    assertThat(Trial.happened(outcome, What.RUN_PRIMES, "return")).isFalse();
    assertThat(WaterAssert.floor(outcome, "plant-room").received())
        .as("the water was gone by then")
        .isCloseTo(WaterAssert.floor(left, "plant-room").received(), within(1e-3));
    assertThat(Math.abs(outcome.ledger().imbalance())).isLessThan(1e-9);
  }

  /** A sensor with a delay of an hour has felt water before something else begins. */
  @Test
  void aSensorGoesOnWaitingWhileSomethingElseBegins() {
    Installation house =
        new DisplayAboveSump()
            .plan()
            .control(
                new Control.LeakSensor(
                    "sensor", "sensor", "tray", 0.001, HOUR, List.of("return-pump")))
            .draw();

    Outcome outcome =
        InTurn.in(house)
            .begins(0, "seam-leaks.sump")
            .begins(30 * MINUTE, "half-clogged.baffle")
            .happen();

    Outcome alone = Trial.after(house, new Failure.SeamLeaks("sump"));
    assertThat(Trial.timeOf(outcome, What.ACTS, "sensor"))
        .isCloseTo(Trial.timeOf(alone, What.ACTS, "sensor"), within(0.01));
  }

  @Test
  void theStoryTellsWhatGoesOnOnlyOnce() {
    Outcome outcome =
        InTurn.in(DisplayAboveSump.asDrawn())
            .begins(0, "seam-leaks.display")
            .begins(10 * MINUTE, "half-clogged.baffle")
            .ends(20 * MINUTE, "half-clogged.baffle")
            .happen();

    assertThat(outcome.story().stream().filter(e -> e.what() == What.LEAKS).count()).isEqualTo(1);
    assertThat(outcome.story().stream().filter(e -> e.what() == What.FLOOR_WET).count())
        .isLessThanOrEqualTo(outcome.floors().size());
    assertThat(outcome.story()).isSortedAccordingTo((a, b) -> Double.compare(a.time(), b.time()));
  }
}
