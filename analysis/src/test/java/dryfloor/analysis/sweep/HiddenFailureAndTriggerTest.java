package dryfloor.analysis.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.Failure.Degree;
import dryfloor.analysis.installation.DisplayAboveSump;
import dryfloor.analysis.installation.EverythingHouse;
import dryfloor.analysis.installation.Trial;
import dryfloor.analysis.installation.WaterAssert;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.Verdict;
import dryfloor.model.Installation;
import org.junit.jupiter.api.Test;

/** A failure that nobody sees, and the one that brings it to light. */
class HiddenFailureAndTriggerTest {

  private static final Failure DRAIN_BLOCKED = new Failure.RunClogs("drain", Degree.FULLY);
  private static final Failure EMERGENCY_CLOGGED = new Failure.RunClogs("emergency", Degree.FULLY);

  @Test
  void theEmergencyDrainSavesTheFloorUnlessItIsCloggedToo() {
    Installation house = EverythingHouse.asDrawn();

    Outcome alone = Trial.after(house, EMERGENCY_CLOGGED);
    Outcome drain = Trial.after(house, DRAIN_BLOCKED);
    Outcome both = Trial.after(house, DRAIN_BLOCKED, EMERGENCY_CLOGGED);

    assertThat(alone.verdict()).isEqualTo(Verdict.DRY);
    assertThat(drain.verdict()).isEqualTo(Verdict.DRY);
    assertThat(both.verdict()).isEqualTo(Verdict.WET);
  }

  @Test
  void aFailureThatShowsNothingLeavesNormalOperationAsItWas() {
    Installation house = EverythingHouse.asDrawn();
    Outcome normal = Trial.normal(house);

    for (Failure hidden :
        new Failure[] {
          new Failure.SiphonBreakBlocked("siphon-break"),
          new Failure.LeakSensorDoesNotAct("sensor"),
          new Failure.BasinDrainBlocked("bund-drain"),
          EMERGENCY_CLOGGED
        }) {
      Outcome outcome = Trial.after(house, hidden);
      assertThat(outcome.verdict()).as(hidden.toString()).isEqualTo(Verdict.DRY);
      for (Outcome.VesselOutcome vessel : normal.vessels()) {
        assertThat(WaterAssert.vessel(outcome, vessel.id()).levelAfter())
            .as(vessel.id() + ", " + hidden)
            .isCloseTo(vessel.levelAfter(), within(1e-4));
      }
    }
  }

  @Test
  void twoProtectionsBothHaveToFailBeforeTheSumpFloods() {
    // A siphon break at 585 mm or a check valve: either keeps the display's water up. A sump that
    // can't take the slice down to the outlet at 200 mm needs one of them.
    Installation house = new DisplayAboveSump().withCheckValve().outletAt(0.2).plan().draw();
    Failure lost = new Failure.BuildingLosesPower();
    Failure hole = new Failure.SiphonBreakBlocked("siphon-break");
    Failure check = new Failure.CheckValveDoesNotClose("check-valve");

    assertThat(Trial.after(house, lost).verdict()).isEqualTo(Verdict.DRY);
    assertThat(Trial.after(house, hole, lost).verdict()).isEqualTo(Verdict.DRY);
    assertThat(Trial.after(house, check, lost).verdict()).isEqualTo(Verdict.DRY);
    assertThat(Trial.after(house, hole, check, lost).verdict()).isEqualTo(Verdict.WET);
  }
}
