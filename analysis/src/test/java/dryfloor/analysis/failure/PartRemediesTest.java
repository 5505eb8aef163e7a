package dryfloor.analysis.failure;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.installation.Shipped;
import dryfloor.model.Installation;
import org.junit.jupiter.api.Test;

/** Nobody is told to fit what is there. */
class PartRemediesTest {

  private static final Installation SHOP = Shipped.named("first-look/corrected");

  @Test
  void aUnionOverADrainedVatIsNotToBecomeAUnionOverADrainedVat() {
    assertThat(remedy("joint-parts.return-line.pump-union"))
        .isEqualTo(
            "look at the union and its seal on a schedule; a larger drain or a leak sensor in the"
                + " basin below it");
  }

  @Test
  void aRunThatHasASiphonBreakIsNotToGetOne() {
    assertThat(remedy("parts-at-lowest-point.return-line")).doesNotContain("siphon break");
  }

  @Test
  void aDrainThatFallsAllTheWayNeedsNoSiphonBreak() {
    assertThat(remedy("parts-at-lowest-point.main-drain"))
        .startsWith("rigid pipe")
        .doesNotContain("siphon break");
  }

  @Test
  void whatTheDrainTookAsksForNoLargerDrain() {
    assertThat(remedy("parts-at-lowest-point.main-drain", Harm.CAUGHT))
        .isEqualTo(
            "rigid pipe, well carried, in place of hose; keep the drain of the basin below it"
                + " free");
    assertThat(remedy("wall-fails.overflow-box", Harm.CAUGHT))
        .endsWith("keep the drain of the basin below it free");
  }

  @Test
  void whereNothingLeavesItsVesselNothingIsToCatchIt() {
    assertThat(remedy("parts-at-lowest-point.top-off-line", Harm.NOTHING_LEAVES))
        .isEqualTo("rigid pipe, well carried, in place of hose");
    assertThat(remedy("half-clogged.teeth", Harm.NOTHING_LEAVES))
        .isEqualTo("clean it on a schedule; guard its crest");
  }

  @Test
  void theOutletOfADrainWantsNoSiphonBreak() {
    assertThat(remedy("second-end-slips-out.main-drain")).doesNotContain("siphon");
    assertThat(remedy("second-end-sinks.main-drain")).isEqualTo("fasten the outlet");
    assertThat(remedy("second-end-sinks.return-line")).contains("keep the siphon break open");
  }

  @Test
  void aDrainWithAnotherBesideItWantsThatKeptFree() {
    assertThat(remedy("clogged.main-drain", Harm.NOTHING_LEAVES))
        .isEqualTo("strainer that is easy to clean; keep the emergency drain beside it free");
    assertThat(remedy("clogged.emergency-drain")).startsWith("pour water in");
  }

  @Test
  void behindACheckValveTheSiphonBreakIsToBeKeptOpen() {
    assertThat(remedy("check-valve-does-not-close.return-check"))
        .contains("the siphon break in the same run");
  }

  @Test
  void whenAPumpThatFillsUpStopsNothingRunsDown() {
    assertThat(remedy("pump-stops.top-off-pump")).doesNotContain("runs down");
    assertThat(remedy("pump-stops.return-pump")).contains("runs down");
  }

  @Test
  void aVesselInABasinIsNotToGetOne() {
    assertThat(remedy("seam-leaks.display"))
        .isEqualTo(
            "stand that stays level; look at the seams on a schedule; leak sensor in the basin"
                + " below it");
  }

  @Test
  void whereTheDrawingMattersLessCommonPracticeIsTold() {
    assertThat(remedy("pump-delivers-half.return-pump")).startsWith("clean the pump");
  }

  private static String remedy(String failure) {
    return remedy(failure, Harm.REACHES_A_FLOOR);
  }

  private static String remedy(String failure, Harm harm) {
    return FailureNames.remedy(FailureCatalogue.find(SHOP, failure).orElseThrow(), SHOP, harm);
  }
}
