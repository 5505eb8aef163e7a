package dryfloor.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.app.sample.SampleInstallation;
import dryfloor.model.unit.Units;
import java.util.List;
import org.junit.jupiter.api.Test;

class CautionsTest {

  private static final String SUPPLY =
      "\"supplies\": [{ \"id\": \"mains\", \"kind\": \"mains\", \"elevation\": \"1 m\","
          + " \"pressure\": \"3 bar\", \"maximumFlow\": \"12 L/min\", \"protection\": \"none\" }],"
          + " \"drains\"";

  @Test
  void onlyWhatTheInstallationHasIsWarnedOf() {
    assertThat(topics(SampleInstallation.text(), Units.METRIC))
        .containsExactly("Electricity", "Floor load", "Slips", "Salt water");
  }

  @Test
  void aSupplyWithoutProtectionEndangersDrinkingWater() {
    String text = SampleInstallation.text().replace("\"drains\"", SUPPLY);
    assertThat(topics(text, Units.METRIC)).contains("Drinking water");
    assertThat(texts(text, Units.METRIC)).contains("20 mm and twice the bore").contains("mains");
    assertThat(texts(text, Units.US)).contains("1 in and twice the opening");
  }

  @Test
  void freshWaterHasNoSaltToWarnOf() {
    String fresh = SampleInstallation.text().replace("35 g/kg", "0 g/kg");
    assertThat(topics(fresh, Units.METRIC)).doesNotContain("Salt water");
  }

  @Test
  void everyCautionNamesItsSource() {
    String text = SampleInstallation.text().replace("\"drains\"", SUPPLY);
    assertThat(cautions(text, Units.METRIC)).allMatch(caution -> !caution.source().isBlank());
  }

  private static List<Caution> cautions(String text, Units units) {
    return new Cautions(Wording.of(SampleInstallation.of(text), units)).all();
  }

  private static List<String> topics(String text, Units units) {
    return cautions(text, units).stream().map(Caution::topic).toList();
  }

  private static String texts(String text, Units units) {
    return cautions(text, units).toString();
  }
}
