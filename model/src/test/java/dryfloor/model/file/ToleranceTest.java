package dryfloor.model.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.model.Installation;
import dryfloor.model.Tolerance;
import dryfloor.model.Tolerance.Spread;
import dryfloor.model.unit.Units;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A file may say of any quantity how far it may be off. */
class ToleranceTest {

  private static final String SAMPLE = SampleFiles.text(SampleFiles.DISPLAY_ABOVE_SUMP);

  @Test
  void whatIsDrawnIsTheValueWithoutItsTolerance() {
    Installation exact = SampleFiles.read(SAMPLE);
    Installation uncertain = SampleFiles.read(with("\"602 mm\"", "\"602 mm ± 5 mm\""));
    assertThat(uncertain.withTolerances(List.of())).isEqualTo(exact);
    assertThat(uncertain.tolerances())
        .containsExactly(
            new Tolerance(exact.vessels().getFirst().id(), "level", new Spread.Amount(0.005)));
  }

  @ParameterizedTest
  @EnumSource(Units.class)
  void tolerancesOfEveryKindComeBackWhenTheyAreWritten(Units units) {
    Installation house = SampleFiles.read(everyQuantityUncertain());
    assertThat(house.tolerances()).hasSizeGreaterThan(20);
    String written = InstallationWriter.text(house, units);
    Rounding.assertSame(SampleFiles.read(written), house);
  }

  @Test
  void theEndsOfAValueTakeWithThemWhatHangsOnIt() {
    UncertainDrawing drawing =
        uncertain("\"raised\": \"900 mm\"", "\"raised\": \"900 mm ± 20 mm\"");
    assertThat(drawing.values()).hasSize(1);
    Installation low = read(drawing.at(List.of(-1.0)));
    Installation asDrawn = read(drawing.at(List.of(0.0)));
    Installation high = read(drawing.at(List.of(1.0)));
    assertThat(low.vessels().getFirst().bottom())
        .isCloseTo(asDrawn.vessels().getFirst().bottom() - 0.02, within(1e-12));
    assertThat(high.vessels().getFirst().level())
        .isCloseTo(asDrawn.vessels().getFirst().level() + 0.02, within(1e-12));
    Rounding.assertSame(asDrawn, SampleFiles.read(SAMPLE));
  }

  @Test
  void aHeightBelowARimIsUncertainAsItIsWritten() {
    UncertainDrawing drawing =
        uncertain("\"level\": \"602 mm\"", "\"level\": \"48 mm ± 5 mm below display.rim\"");
    double drawn = read(drawing.at(List.of(0.0))).vessels().getFirst().level();
    assertThat(read(drawing.at(List.of(1.0))).vessels().getFirst().level())
        .isCloseTo(drawn - 0.005, within(1e-12));
    assertThat(drawing.values().getFirst().measuredFrom()).isEqualTo(" below display.rim");
    assertThat(drawing.values().getFirst().at(1)).isCloseTo(0.053, within(1e-12));
  }

  @Test
  void thePointsOfACurveAreOffTogether() {
    Installation exact = SampleFiles.read(SAMPLE);
    String written = InstallationWriter.text(exact, Units.METRIC);
    String text = written.replaceAll("(\\[\"[^\"]* L/min\", \"[^\"]* m)\"\\]", "$1 ± 10 %\"]");
    assertThat(text).isNotEqualTo(written);
    UncertainDrawing drawing = ((Reading.Read) InstallationFile.readText(text)).uncertain();
    assertThat(drawing.values()).extracting(UncertainValue::field).containsOnly("curve");
    assertThat(drawing.values().getFirst().quantities()).isGreaterThan(1);
  }

  @Test
  void anEndThatCannotBeDrawnIsAnErrorAtTheTolerance() {
    Rejection.of("\"602 mm\"", "\"602 mm ± 100 mm\"")
        .isOnly(
            "vessels[0].level",
            "\"602 mm ± 100 mm\"",
            "'602 mm ± 100 mm' reaches '702 mm', and then: ",
            "");
  }

  @Test
  void aPercentageOfAHeightIsRefusedBecauseItSaysNothing() {
    Rejection.of("\"602 mm\"", "\"602 mm ± 2 %\"")
        .isOnly(
            "vessels[0].level",
            "\"602 mm ± 2 %\"",
            "is a percentage of a height, which depends on where it is measured from",
            "\"580 mm ± 5 mm\"");
  }

  @Test
  void aToleranceBehindWhatTheHeightIsMeasuredFromIsToldWhereItBelongs() {
    Rejection.of("\"602 mm\"", "\"48 mm below display.rim ± 5 mm\"")
        .isOnly(
            "vessels[0].level",
            "\"48 mm below display.rim ± 5 mm\"",
            "stands behind what the height is measured from",
            "\"80 mm ± 5 mm below display.rim\"");
  }

  @Test
  void aToleranceInAnotherUnitIsToldAtItsPlace() {
    Rejection.of("\"bore\": \"32 mm\"", "\"bore\": \"32 mm ± 2 L\"")
        .isOnly("runs[2].bore", "\"32 mm ± 2 L\"", "'2 L' is a volume", "\"32 mm ± 10 %\"");
  }

  @Test
  void aNameMayHoldASignOfATolerance() {
    Installation house =
        SampleFiles.read(SAMPLE.replaceFirst("\"name\": \"[^\"]*\"", "\"name\": \"3 mm ± 1 mm\""));
    assertThat(house.name()).isEqualTo("3 mm ± 1 mm");
    assertThat(house.tolerances()).isEmpty();
  }

  @Test
  void theSalinityThatVesselsShareIsExact() {
    Rejection.ofText(
            SAMPLE.replaceFirst("\"salinity\": \"35 g/kg\"", "\"salinity\": \"35 g/kg ± 1 g/kg\""))
        .says(
            "water.salinity",
            "\"35 g/kg ± 1 g/kg\"",
            "the salinity that all vessels share has no tolerance",
            "in a vessel");
  }

  @Test
  void moreUncertainValuesThanAnybodyCanJudgeAreRefused() {
    String stone = "{ \"from\": \"0 mm\", \"to\": \"350 mm\", \"volume\": \"1 L ± 1 %\" }";
    String exact = "{ \"from\": \"0 mm\", \"to\": \"350 mm\", \"volume\": \"90 L\" }";
    assertThat(Rejection.of(exact, String.join(", ", Collections.nCopies(65, stone))).problems())
        .singleElement()
        .satisfies(
            problem -> {
              assertThat(problem.path()).isEqualTo("vessels[0].contents[64].volume");
              assertThat(problem.message()).isEqualTo("65 values with a tolerance");
              assertThat(problem.remedy()).startsWith("at most 64");
            });
  }

  /** The sample with a small tolerance behind every quantity that takes one. */
  private static String everyQuantityUncertain() {
    String written = InstallationWriter.text(SampleFiles.read(SAMPLE), Units.METRIC);
    String text = written;
    for (Map.Entry<String, String> field :
        Map.of(
                "length", " mm ± 0.01 mm",
                "bore", " mm ± 0.01 mm",
                "level", " mm ± 0.01 mm",
                "area", " m2 ± 0.1 %",
                "away", " h ± 1 h",
                "temperature", " °C ± 1 °C",
                "dripArea", " m2 ± 1 %",
                "crackingHead", " m ± 1 %",
                "kv", " Kv ± 0.1 Kv",
                "speed", " % ± 1 %")
            .entrySet()) {
      text =
          text.replaceAll(
              "(\""
                  + field.getKey()
                  + "\": \"[0-9.]*[1-9][0-9.]*)"
                  + field.getValue().replaceFirst(" ±.*", "")
                  + "\"",
              "$1" + field.getValue() + "\"");
    }
    return text;
  }

  private static String with(String exact, String uncertain) {
    assertThat(SAMPLE).contains(exact);
    int start = SAMPLE.indexOf(exact);
    return SAMPLE.substring(0, start) + uncertain + SAMPLE.substring(start + exact.length());
  }

  private static UncertainDrawing uncertain(String exact, String uncertain) {
    return ((Reading.Read) InstallationFile.readText(with(exact, uncertain))).uncertain();
  }

  private static Installation read(Reading reading) {
    return ((Reading.Read) reading).installation();
  }
}
