package dryfloor.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.outcome.Outcome;
import dryfloor.app.sample.SampleInstallation;
import dryfloor.app.sample.SampleOutcome;
import dryfloor.model.unit.Units;
import org.junit.jupiter.api.Test;

class VerdictSentenceTest {

  @Test
  void aWetFloorComesWithLitresDepthAndTime() {
    assertThat(say(SampleOutcome.wet(), Units.METRIC))
        .isEqualTo("WET: 34 L reach the plant room floor (3 mm deep), the first after 2 min 10 s.");
  }

  @Test
  void americansHearGallonsAndInches() {
    assertThat(say(SampleOutcome.wet(), Units.US))
        .isEqualTo(
            "WET: 9.0 gal reach the plant room floor (0.12 in deep), the first after 2 min 10 s.");
  }

  @Test
  void whatGoesOnIsToldByTheHourAndInAll() {
    assertThat(say(SampleOutcome.endless(), Units.METRIC))
        .endsWith(
            "5.0 L of it run on beyond the drawing."
                + " It goes on at 12 L/h until somebody comes; these are the amounts"
                + " after 72 h.");
  }

  @Test
  void whatIsCaughtIsToldByWhoTakesIt() {
    assertThat(say(SampleOutcome.caught(), Units.METRIC))
        .isEqualTo(
            "CAUGHT: the sump tray holds 22 L and the gully in the cellar takes 3.0 L. No floor"
                + " gets wet. From then on it repeats itself every 1 min 30 s.");
  }

  @Test
  void aDryFloorComesWithItsMargin() {
    assertThat(say(SampleOutcome.dry(), Units.METRIC))
        .isEqualTo(
            "DRY: nothing leaves its vessel. The sump comes closest: 12 mm below its rim after"
                + " 58 s.");
  }

  @Test
  void whereNoLevelRisesToARimTheOneThatIsClosestAnywayIsTold() {
    assertThat(say(SampleOutcome.calm(), Units.METRIC))
        .isEqualTo(
            "DRY: nothing leaves its vessel. No level comes closer to a rim than that of the"
                + " display at the start: 43 mm below it.");
  }

  @Test
  void aFloorThatItsWaterHasLeftAgainNamesTheDrain() {
    assertThat(say(SampleOutcome.floorWith(0.034, 0.003, 0.002, 0.031), Units.METRIC))
        .isEqualTo(
            "WET: 34 L run over the plant room floor (3 mm deep at the end; 31 L of it leave"
                + " through the gully in the cellar), the first after 2 min 10 s.");
  }

  @Test
  void aFloorThatDriesAgainNamesTheDrainInPlaceOfADepth() {
    assertThat(say(SampleOutcome.floorWith(0.034, 0, 0, 0.034), Units.METRIC))
        .startsWith(
            "WET: 34 L run over the plant room floor (all of it leaves through the gully in the"
                + " cellar)");
  }

  @Test
  void waterThatMostlyStandsReachesTheFloorAlthoughSomeDrains() {
    assertThat(say(SampleOutcome.floorWith(0.034, 0.003, 0.024, 0.010), Units.METRIC))
        .startsWith(
            "WET: 34 L reach the plant room floor (3 mm deep at the end; 10 L of it leave through"
                + " the gully in the cellar)");
  }

  private static String say(Outcome outcome, Units units) {
    return new VerdictSentence(Wording.of(SampleInstallation.get(), units)).of(outcome);
  }
}
