package dryfloor.model.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dryfloor.model.Installation;
import dryfloor.model.unit.Units;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is written is read again as it was, whatever the units. */
class RoundTripTest {

  @ParameterizedTest
  @CsvSource({
    SampleFiles.DISPLAY_ABOVE_SUMP + ", METRIC",
    SampleFiles.DISPLAY_ABOVE_SUMP + ", US",
    SampleFiles.EVERY_FORM + ", METRIC",
    SampleFiles.EVERY_FORM + ", US",
  })
  void aSampleComesBackAsItWas(String name, Units units) {
    Installation installation = SampleFiles.read(SampleFiles.text(name));
    Rounding.assertSame(
        SampleFiles.read(InstallationWriter.text(installation, units)), installation);
  }

  @Property(tries = 200)
  void anyHouseComesBackAsItWas(@ForAll("houses") Installation house, @ForAll Units units) {
    Rounding.assertSame(SampleFiles.read(InstallationWriter.text(house, units)), house);
  }

  @Property(tries = 100)
  void theSameHouseInMetricAndUsReadsTheSame(@ForAll("houses") Installation house) {
    Rounding.assertSame(
        SampleFiles.read(InstallationWriter.text(house, Units.US)),
        SampleFiles.read(InstallationWriter.text(house, Units.METRIC)));
  }

  @Property(tries = 20)
  void theTextOfAFileDoesNotDriftWhenItIsSavedAgainAndAgain(@ForAll("houses") Installation house) {
    String once = InstallationWriter.text(house, Units.METRIC);
    String twice = InstallationWriter.text(SampleFiles.read(once), Units.METRIC);
    String thrice = InstallationWriter.text(SampleFiles.read(twice), Units.METRIC);
    assertThat(thrice).isEqualTo(twice);
  }

  @Test
  void theComparisonNoticesAHundredthOfAMicrometre() {
    String text = SampleFiles.text(SampleFiles.DISPLAY_ABOVE_SUMP);
    Installation house = SampleFiles.read(text);
    Installation other = SampleFiles.read(text.replace("602 mm", "602.00001 mm"));
    assertThatThrownBy(() -> Rounding.assertSame(other, house))
        .isInstanceOf(AssertionError.class)
        .hasMessageContaining("vessels[0].level");
  }

  @Test
  void aDrawingThatRefersToNothingIsNotWritten() {
    Installation sound = SampleFiles.read(SampleFiles.text(SampleFiles.DISPLAY_ABOVE_SUMP));
    Installation broken =
        new Installation(
            sound.name(),
            sound.conditions(),
            List.of(),
            sound.floors(),
            sound.vessels(),
            sound.weirs(),
            sound.junctions(),
            sound.supplies(),
            sound.drains(),
            sound.runs(),
            sound.circulationPumps(),
            sound.circuits(),
            sound.controls(),
            sound.failureSettings());
    assertThatThrownBy(() -> InstallationWriter.text(broken, Units.METRIC))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("'cellar' is not drawn");
  }

  @Provide
  Arbitrary<Installation> houses() {
    return Houses.any();
  }
}
