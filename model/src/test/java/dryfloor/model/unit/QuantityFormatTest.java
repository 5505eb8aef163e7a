package dryfloor.model.unit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Quantities are shown with the digits that a builder can use. */
class QuantityFormatTest {

  private final QuantityFormat metric = new QuantityFormat(Units.METRIC);
  private final QuantityFormat us = new QuantityFormat(Units.US);

  @ParameterizedTest
  @CsvSource({"0.6204, 620 mm", "-0.0126, -13 mm", "-0.0001, 0 mm", "0, 0 mm"})
  void aLevelIsInWholeMillimetres(double metres, String shown) {
    assertThat(metric.level(metres)).isEqualTo(shown);
  }

  @ParameterizedTest
  @CsvSource({
    "0.12345, 123 L",
    "0.0999, 99.9 L",
    "0.09996, 100 L",
    "0.0123, 12.3 L",
    "0.00042, 0.42 L",
    "0, 0.0 L",
  })
  void aVolumeHasADecimalBelowAHundredLitres(double cubicMetres, String shown) {
    assertThat(metric.volume(cubicMetres)).isEqualTo(shown);
  }

  @ParameterizedTest
  @CsvSource({
    "0.4, 0.4 s",
    "41, 41 s",
    "59.6, 1 min",
    "60, 1 min",
    "250, 4 min 10 s",
    "3599.7, 1 h",
    "3600, 1 h",
    "12000, 3 h 20 min",
    "86399, 1 d",
    "194400, 2 d 6 h",
    "-250, -4 min 10 s",
  })
  void aTimeIsInItsTwoLargestUnits(double seconds, String shown) {
    assertThat(metric.time(seconds)).isEqualTo(shown);
  }

  @Test
  void americansReadInchesGallonsAndPounds() {
    assertThat(us.level(0.0254 * 3.5)).isEqualTo("3.50 in");
    assertThat(us.length(3.048)).isEqualTo("10.00 ft");
    assertThat(us.area(0.09290304 * 200)).isEqualTo("200 ft2");
    assertThat(us.volume(0.003785411784 * 30)).isEqualTo("30.0 gal(US)");
    assertThat(us.flow(6.30901964e-5 * 5)).isEqualTo("5.0 gpm");
    assertThat(us.pressure(6894.757293168 * 40)).isEqualTo("40.0 psi");
    assertThat(us.temperature(25)).isEqualTo("77.0 °F");
    assertThat(us.mass(0.45359237 * 120)).isEqualTo("120 lb");
  }

  @Test
  void everybodyElseReadsMetricUnits() {
    assertThat(metric.length(3.048)).isEqualTo("3.05 m");
    assertThat(metric.head(3.2)).isEqualTo("3.20 m");
    assertThat(metric.area(18.6)).isEqualTo("18.6 m2");
    assertThat(metric.flow(1e-3)).isEqualTo("60.0 L/min");
    assertThat(metric.pressure(3e5)).isEqualTo("3.00 bar");
    assertThat(metric.temperature(25)).isEqualTo("25.0 °C");
    assertThat(metric.salinity(34.96)).isEqualTo("35.0 g/kg");
    assertThat(metric.fraction(0.6)).isEqualTo("60 %");
  }

  @Test
  void whatIsNotKnownIsShownAsADash() {
    assertThat(metric.volume(Double.NaN)).isEqualTo("–");
    assertThat(metric.time(Double.POSITIVE_INFINITY)).isEqualTo("–");
  }
}
