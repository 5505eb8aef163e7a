package dryfloor.analysis.outcome;

import static dryfloor.analysis.installation.WaterAssert.assertLevel;
import static dryfloor.analysis.installation.WaterAssert.assertLitresIn;
import static dryfloor.analysis.installation.WaterAssert.assertLitresOn;
import static dryfloor.analysis.installation.WaterAssert.assertReached;
import static dryfloor.analysis.installation.WaterAssert.assertSpilled;
import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.Failure.Degree;
import dryfloor.analysis.installation.DisplayAboveSump;
import dryfloor.analysis.installation.Trial;
import dryfloor.analysis.outcome.StoryEvent.What;
import org.junit.jupiter.api.Test;

/**
 * The drain of {@link DisplayAboveSump} is blocked, worked out by hand. All its water is 980.50637
 * L (see {@link PowerLossByHandTest}).
 *
 * <pre>
 * What stays below (L):
 *   sump at its baffle, 0.4 m² · 300 mm                        120.000
 *   chamber at the pump's inlet, 0.3 m² · 50 mm                 15.000
 *   return full, skimmer's pipe full, skimmer's body            10.986
 *   together                                                   145.986
 * The display gets 980.506 − 145.986 = 834.520 L and holds 1260 · 0.65 = 819.000 L to its rim:
 *   15.520 L go over the rim.
 * The chamber's water at the inlet falls to within the last 0.2 mm over it: 0.03 L at most.
 * </pre>
 */
class BlockedDrainByHandTest {

  private static final Failure BLOCKED = new Failure.RunClogs("drain", Degree.FULLY);

  @Test
  void aBlockedDrainPutsTheChambersWaterOverTheRim() {
    Outcome outcome = Trial.after(DisplayAboveSump.asDrawn(), BLOCKED);

    assertThat(outcome.verdict()).isEqualTo(Verdict.WET);
    assertThat(outcome.ending()).isInstanceOf(Ending.AtRest.class);
    assertLevel(outcome, "display").isWithin(0.1, 650);
    assertLevel(outcome, "chamber").isWithin(0.25, 50);
    assertLevel(outcome, "sump").isWithin(0.1, 300);
    assertSpilled(outcome, "display").isCloseToLitres(15.520);
    assertLitresOn(outcome, "hall").isCloseToLitres(15.520);
    assertReached(outcome, "plant-room").isNothing();
    assertThat(Trial.happened(outcome, What.SUCKS_AIR, "return-pump")).isTrue();
  }

  @Test
  void aBasinUnderTheDisplayCatchesWhatItHolds() {
    // 1.8 m² · 5 mm = 9.000 L stay in the basin, 6.520 L go on to the floor.
    Outcome outcome =
        Trial.after(new DisplayAboveSump().withBasinUnderTheDisplay().plan().draw(), BLOCKED);

    assertThat(outcome.verdict()).isEqualTo(Verdict.WET);
    assertSpilled(outcome, "display").isCloseToLitres(15.520);
    assertLitresIn(outcome, "display-tray").isCloseToLitres(9.000);
    assertLitresOn(outcome, "hall").isCloseToLitres(6.520);
  }

  /**
   *
   *
   * <pre>
   * Half the mouth of 50 mm takes 0.5 · 0.61 · 1.9635e-3 · √(2 g · 0.05) = 0.593 L/s with the water
   * at the rim, 50 mm over the lip. The pump lifts more, the rest goes over the rim, until the
   * chamber is at the pump's inlet and the pump lifts no more than comes down:
   *   display at its rim, 1260 · 0.65                           819.000
   *   chamber at the pump's inlet                                15.000
   *   sump 7.6 mm over its baffle (Rehbock, 0.593 L/s, 0.5 m)   123.055
   *   return, skimmer's pipe, skimmer's body                     10.986
   *   over the rim, of 980.506                                   12.465
   * less the last 0.2 mm over the inlet.
   * </pre>
   */
  @Test
  void aHalfBlockedDrainTakesLessThanThePumpLifts() {
    Outcome outcome =
        Trial.after(DisplayAboveSump.asDrawn(), new Failure.RunClogs("drain", Degree.BY_HALF));

    assertThat(outcome.verdict()).isEqualTo(Verdict.WET);
    assertLevel(outcome, "sump").isWithin(0.1, 307.6);
    assertSpilled(outcome, "display").isWithin(0.07, 12.465);
  }
}
