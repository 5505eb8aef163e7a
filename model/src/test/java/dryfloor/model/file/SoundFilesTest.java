package dryfloor.model.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.model.Installation;
import dryfloor.model.element.Vessel;
import dryfloor.model.part.Part;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** What a sound file says is what the installation holds, in SI units above the datum. */
class SoundFilesTest {

  private static final Offset<Double> EXACTLY = within(1e-12);

  private final Installation house =
      SampleFiles.read(SampleFiles.text(SampleFiles.DISPLAY_ABOVE_SUMP));

  @Test
  void aVesselStandsAtTheElevationOfItsFloor() {
    assertThat(vessel("display").bottom()).isCloseTo(0.9, EXACTLY);
    assertThat(vessel("display").level()).isCloseTo(1.502, EXACTLY);
  }

  @Test
  void aVesselInATrayStandsOnTheTraysBottom() {
    assertThat(vessel("sump").bottom()).isCloseTo(-2.78, EXACTLY);
  }

  @Test
  void aTrayIsDryUnlessItSaysOtherwise() {
    assertThat(vessel("tray").level()).isEqualTo(vessel("tray").bottom());
  }

  @Test
  void aVesselHasTheSalinityOfTheWaterUnlessItSaysOtherwise() {
    assertThat(vessel("sump").salinity()).isEqualTo(35);
    assertThat(vessel("top-off-reservoir").salinity()).isZero();
  }

  @Test
  void aWeirIsMeasuredFromTheBottomOfTheVesselItDrains() {
    assertThat(house.weirs().getFirst().crest()).isCloseTo(1.49, EXACTLY);
  }

  @Test
  void aCrestMayBeMeasuredFromARim() {
    assertThat(run("outlet-left").waypoints().getFirst().elevation()).isCloseTo(1.59, EXACTLY);
  }

  @Test
  void aSiphonBreakSitsOnTheLegThatItsVesselCovers() {
    var part = (Part.SiphonBreak) run("outlet-left").parts().getFirst();
    assertThat(part.elevation()).isCloseTo(1.485, EXACTLY);
    assertThat(part.along()).isGreaterThan(run("outlet-left").waypoints().getFirst().along());
  }

  @Test
  void anOutlineByItsCornersHasTheirAreaAndRim() {
    Installation other = SampleFiles.read(SampleFiles.text(SampleFiles.EVERY_FORM));
    Vessel lagoon = other.vessels().getFirst();
    assertThat(lagoon.shape().areaAt(0)).isCloseTo(4.0, EXACTLY);
    assertThat(lagoon.shape().rimLength()).isCloseTo(10.0, EXACTLY);
    assertThat(lagoon.level()).isCloseTo(lagoon.rim() - 0.06, EXACTLY);
  }

  @Test
  void waypointsAreSpreadByTheHeightThatEachLegCovers() {
    // From the tee at 0.98 m up to 1.59 m and down to 1.46 m: 0.61 + 0.13 m, and 0.86 m to share.
    assertThat(run("outlet-left").waypoints().getFirst().along())
        .isCloseTo(0.61 + (1.6 - 0.74) / 2, EXACTLY);
  }

  @Test
  void whatMayBeMeantButShouldBeLookedAtIsAWarning() {
    String text =
        SampleFiles.text(SampleFiles.DISPLAY_ABOVE_SUMP)
            .replace("\"protection\": \"airGap\"", "\"protection\": \"none\"");
    Reading reading = InstallationFile.readText(text);
    assertThat(((Reading.Read) reading).warnings())
        .extracting(Problem::path)
        .containsExactly("supplies[0].protection");
  }

  @Test
  void aNameLeftOutIsTheIdInWords() {
    assertThat(run("main-drain").name()).isEqualTo("main drain");
  }

  private Vessel vessel(String id) {
    return house.vessels().stream().filter(v -> v.id().equals(id)).findFirst().orElseThrow();
  }

  private dryfloor.model.element.Run run(String id) {
    return house.runs().stream().filter(r -> r.id().equals(id)).findFirst().orElseThrow();
  }
}
