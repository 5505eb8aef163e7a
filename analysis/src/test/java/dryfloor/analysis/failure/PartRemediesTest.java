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
  void whereTheDrawingMattersLessCommonPracticeIsTold() {
    assertThat(remedy("seam-leaks.display")).startsWith("basin large enough");
  }

  private static String remedy(String failure) {
    return FailureNames.remedy(FailureCatalogue.find(SHOP, failure).orElseThrow(), SHOP);
  }
}
