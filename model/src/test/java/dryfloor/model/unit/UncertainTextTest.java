package dryfloor.model.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.model.Tolerance.Spread;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Quantities with a tolerance, as people write them. */
class UncertainTextTest {

  @ParameterizedTest
  @CsvSource({
    "LENGTH, 120 mm ± 5 mm, 0.12, 0.005",
    "LENGTH, 120 mm +/- 5 mm, 0.12, 0.005",
    "LENGTH, 120mm±5mm, 0.12, 0.005",
    "LENGTH, 120 ± 5 mm, 0.12, 0.005",
    "LENGTH, 0.12 m ± 0.5 cm, 0.12, 0.005",
    "LENGTH, 1 1/4 in ± 1/8 in, 0.03175, 0.003175",
    "LENGTH, -20 mm ± 5 mm, -0.02, 0.005",
    "LENGTH, 8 mm to 12 mm, 0.01, 0.002",
    "LENGTH, 8 to 12 mm, 0.01, 0.002",
    "LENGTH, -5 mm to 5 mm, 0, 0.005",
    "FLOW, 60 L/min ± 10 %, 0.001, 0.0001",
    "FLOW, 60 L/min ± 6 L/min, 0.001, 0.0001",
    "HEAD, 3.2 m ± 10 %, 3.2, 0.32",
    "FRACTION, 80 % ± 5 %, 0.8, 0.05",
    "FRACTION, 80 ± 5 %, 0.8, 0.05",
    "FRACTION, 0.8 ± 0.05, 0.8, 0.05",
    "FRACTION, 50 % to 100 %, 0.75, 0.25",
    "NUMBER, 1.5 ± 10 %, 1.5, 0.15",
    "VALVE_COEFFICIENT, 6 ± 1, 6, 1",
    "TEMPERATURE, 25 °C ± 2 °C, 25, 2",
    "TEMPERATURE, 77 °F ± 9 °F, 25, 5",
    "TIME, 30 min to 90 min, 3600, 1800"
  })
  void aToleranceIsReadWithItsValue(
      QuantityKind kind, String text, double drawn, double plusMinus) {
    UncertainText.Parsed.Value value = value(kind, text);
    assertThat(value.inside()).isCloseTo(drawn, within(1e-12));
    assertThat(value.spread().orElseThrow().around(value.inside()))
        .isCloseTo(plusMinus, within(1e-12));
  }

  @Test
  void aShareStaysAShare() {
    assertThat(value(QuantityKind.FLOW, "60 L/min ± 10 %").spread())
        .contains(new Spread.Share(0.1));
  }

  @Test
  void withoutAToleranceNothingIsUncertain() {
    assertThat(value(QuantityKind.LENGTH, "120 mm").spread()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "LENGTH, 120 mm ± 5 mm, 115 mm, 125 mm",
    "LENGTH, 120 ± 5 mm, 115 mm, 125 mm",
    "LENGTH, 0.12 m ± 5 mm, 0.115 m, 0.125 m",
    "LENGTH, 8 to 12 mm, 8 mm, 12 mm",
    "FLOW, 60 L/min ± 10 %, 54 L/min, 66 L/min",
    "FRACTION, 80 % ± 5 %, 75 %, 85 %",
    "NUMBER, 1.5 ± 0.1, 1.4, 1.6",
    "TEMPERATURE, 77 °F ± 9 °F, 68 °F, 86 °F",
  })
  void itsEndsAreExactTexts(QuantityKind kind, String text, String lower, String upper) {
    assertThat(UncertainText.at(kind, text, -1)).isEqualTo(lower);
    assertThat(UncertainText.at(kind, text, 1)).isEqualTo(upper);
  }

  @ParameterizedTest
  @CsvSource({
    "LENGTH, 120 mm ± -5 mm, the tolerance '-5 mm' is negative",
    "LENGTH, 120 mm ± 0 mm, the tolerance '0 mm' is zero",
    "LENGTH, 120 mm ± 5 L, '5 L' is a volume",
    "LENGTH, 120 mm ± 5, '5' has no unit",
    "LENGTH, 120 mm ±, no number stands behind ±",
    "LENGTH, 120 mm ± some, no number stands behind ±",
    "LENGTH, 120 mm ± 150 %, the tolerance '150 %' is more than the value itself",
    "LENGTH, 120 mm ± 5 km, 'km' in '5 km' is no unit known here",
    "LENGTH, 120 kg ± 5 mm, '120 kg' is a mass",
    "LENGTH, 12 mm to 8 mm, '12 mm to 8 mm' does not go up",
    "LENGTH, 8 mm to 12 L, '12 L' is a volume",
    "TEMPERATURE, 25 °C ± 10 %, a temperature has no percentage",
    "TEMPERATURE, 25 °C ± 60 °C, absurdly large",
  })
  void whatIsNoToleranceIsToldWithWhatWouldBeRight(
      QuantityKind kind, String text, String complaint) {
    assertThat(UncertainText.parse(kind, text))
        .isInstanceOfSatisfying(
            UncertainText.Parsed.Unfit.class,
            unfit -> {
              assertThat(unfit.found()).contains(complaint);
              assertThat(unfit.wanted()).contains(kind.description());
            });
  }

  @ParameterizedTest
  @CsvSource({
    "LENGTH, 120 mm, 0.005, 120 mm ± 5 mm",
    "LENGTH, 5 in, 0.0254, 5 in ± 1 in",
    "FRACTION, 80 %, 0.05, 80 % ± 5 %",
    "TEMPERATURE, 77 °F, 5, 77 °F ± 9 °F",
    "NUMBER, 1.5, 0.1, 1.5 ± 0.1",
  })
  void itIsWrittenInTheUnitOfItsValue(
      QuantityKind kind, String exact, double plusMinus, String written) {
    assertThat(UncertainText.with(new Spread.Amount(plusMinus), exact)).isEqualTo(written);
  }

  private static UncertainText.Parsed.Value value(QuantityKind kind, String text) {
    return switch (UncertainText.parse(kind, text)) {
      case UncertainText.Parsed.Value value -> value;
      case UncertainText.Parsed.Unfit unfit -> throw new AssertionError(unfit);
    };
  }
}
