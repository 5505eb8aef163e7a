package dryfloor.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.model.unit.Units;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AmountsTest {

  private static final Amounts METRIC = new Amounts(Units.METRIC);
  private static final Amounts US = new Amounts(Units.US);

  @ParameterizedTest
  @CsvSource({
    "0, 0 L, 0 gal",
    "4e-8, 0 L, 0 gal",
    "1e-6, under 10 mL, under 0.01 gal",
    "0.000026, 26 mL, under 0.01 gal",
    "0.000572, 570 mL, 0.15 gal",
    "-0.000563, −560 mL, −0.15 gal",
    "0.00034, 340 mL, 0.09 gal",
    "0.0009999, 1.0 L, 0.26 gal",
    "0.0021, 2.1 L, 0.55 gal",
    "0.034, 34 L, 9.0 gal",
    "-0.0344, −34 L, −9.1 gal",
    "0.037496, 37 L, 9.9 gal",
    "0.094497, 94 L, 25 gal",
    "1.2345, 1235 L, 326 gal"
  })
  void volumesAreAsShortAsTheyAreTrue(double volume, String metric, String us) {
    assertThat(METRIC.volume(volume)).isEqualTo(metric);
    assertThat(US.volume(volume)).isEqualTo(us);
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0 mm, 0 in",
    "0.012, +12 mm, +0.47 in",
    "-0.191, −191 mm, −7.52 in",
    "-0.0001, 0 mm, 0 in"
  })
  void changesOfLevelCarryTheirSign(double change, String metric, String us) {
    assertThat(METRIC.levelChange(change)).isEqualTo(metric);
    assertThat(US.levelChange(change)).isEqualTo(us);
  }

  @ParameterizedTest
  @CsvSource({
    "0.000008, 0 L, 0 L",
    "-0.000008, 0 L, 0 L",
    "0.00006, 60 mL, +60 mL",
    "0.0021, 2.1 L, +2.1 L"
  })
  void noTableNeedsADribble(double volume, String tabled, String change) {
    assertThat(METRIC.tabled(volume)).isEqualTo(tabled);
    assertThat(METRIC.volumeChange(volume)).isEqualTo(change);
  }

  @ParameterizedTest
  @CsvSource({
    "0.04, under 0.1 L/h, under 0.1 gal/h",
    "12, 12 L/h, 3.2 gal/h",
    "0.5, 0.5 L/h, 0.1 gal/h"
  })
  void flowsThatGoOnAreToldByTheHour(double litresPerHour, String metric, String us) {
    double flow = litresPerHour * 1e-3 / 3600;
    assertThat(METRIC.hourlyFlow(flow)).isEqualTo(metric);
    assertThat(US.hourlyFlow(flow)).isEqualTo(us);
  }
}
