package dryfloor.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.app.sample.SampleInstallation;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NamesTest {

  @ParameterizedTest
  @CsvSource({
    "Hall, the hall floor",
    "Hall floor, the hall floor",
    "Mezzanine deck, the mezzanine deck",
    "Loft boards, the loft boards",
    "Bottom of the drain pit, the bottom of the drain pit",
    "The hall, the hall floor"
  })
  void waterLiesOnAFloorHoweverItIsCalled(String name, String spoken) {
    String text = SampleInstallation.text().replace("\"Hall floor\"", "\"" + name + "\"");
    assertThat(Names.of(SampleInstallation.of(text)).the("hall")).isEqualTo(spoken);
  }

  @ParameterizedTest
  @CsvSource({
    "Raceway 4, raceway 4",
    "Lift b, lift b",
    "The sump, the sump",
    "UV lamp, the UV lamp",
    "Rack b upper, the rack b upper"
  })
  void numberedThingsHaveNoArticle(String name, String spoken) {
    String text = SampleInstallation.text().replace("\"Sump\"", "\"" + name + "\"");
    assertThat(Names.of(SampleInstallation.of(text)).the("sump")).isEqualTo(spoken);
  }
}
