package dryfloor.model.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Quantities as people write them come out in SI. */
class QuantityTextTest {

  /**
   * Definitions: inch, foot and pound by the International Yard and Pound Agreement (1959); US
   * gallon 231 in³, UK gallon 4.546 09 L (Weights and Measures Act 1985); psi from the pound and
   * standard gravity; Kv = 0.865 Cv (IEC 60534-1); all from memory.
   */
  @ParameterizedTest
  @CsvSource({
    "LENGTH, 32 mm, 0.032",
    "LENGTH, 32mm, 0.032",
    "LENGTH, 3.2 cm, 0.032",
    "LENGTH, -2.8 m, -2.8",
    "LENGTH, 1.25 in, 0.03175",
    "LENGTH, 1 1/4 in, 0.03175",
    "LENGTH, 1-1/4 in, 0.03175",
    "LENGTH, 3/4 in, 0.01905",
    "LENGTH, 6 ft, 1.8288",
    "LENGTH, 1.5 µm, 1.5e-6",
    "AREA, 2 m2, 2",
    "AREA, 2 m², 2",
    "AREA, 1 cm2, 1e-4",
    "AREA, 1 mm2, 1e-6",
    "AREA, 1 in2, 6.4516e-4",
    "AREA, 1 ft2, 0.09290304",
    "VOLUME, 120 L, 0.12",
    "VOLUME, 120 l, 0.12",
    "VOLUME, 5 mL, 5e-6",
    "VOLUME, 2 m3, 2",
    "VOLUME, 300 gal(US), 1.1356235352",
    "VOLUME, 300 gal (US), 1.1356235352",
    "VOLUME, 1 gal(UK), 4.54609e-3",
    "FLOW, 4 L/min, 6.6666666666666667e-5",
    "FLOW, 3600 L/h, 1e-3",
    "FLOW, 1 L/s, 1e-3",
    "FLOW, 3.6 m3/h, 1e-3",
    "FLOW, 1 gpm, 6.30901964e-5",
    "FLOW, 1000 gph, 1.0515032733e-3",
    "FLOW, 100 gpd, 4.3812636389e-6",
    "PRESSURE, 3 bar, 300000",
    "PRESSURE, 250 mbar, 25000",
    "PRESSURE, 2 kPa, 2000",
    "PRESSURE, 12 Pa, 12",
    "PRESSURE, 1 psi, 6894.757293168",
    "HEAD, 3.2 m, 3.2",
    "HEAD, 3.2 mH2O, 3.2",
    "HEAD, 10 ft head, 3.048",
    "HEAD, 10 ft, 3.048",
    "TIME, 10 s, 10",
    "TIME, 2 min, 120",
    "TIME, 72 h, 259200",
    "TIME, 3 d, 259200",
    "TEMPERATURE, 25 °C, 25",
    "TEMPERATURE, 25 C, 25",
    "TEMPERATURE, 77 °F, 25",
    "TEMPERATURE, 78 F, 25.5555555556",
    "SALINITY, 35 g/kg, 35",
    "SALINITY, 35 ppt, 35",
    "MASS, 60 lb, 27.2155422",
    "MASS, 500 g, 0.5",
    "MASS, 1.2 t, 1200",
    "VALVE_COEFFICIENT, 6.5, 6.5",
    "VALVE_COEFFICIENT, 6.5 Kv, 6.5",
    "VALVE_COEFFICIENT, 10 Cv, 8.65",
    "NUMBER, 1e2, 100",
    "FRACTION, 50 %, 0.5",
    "FRACTION, 0.5, 0.5",
  })
  void aQuantityComesOutInTheUnitInside(QuantityKind kind, String text, double inside) {
    assertThat(value(kind, text)).isCloseTo(inside, within(Math.abs(inside) * 1e-9));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "LENGTH | 32 kg | is a mass | a length such as \"32 mm\"",
        "LENGTH | 32 | has no unit | a length such as \"32 mm\"",
        "VOLUME | 300 gal | does not say which gallon | gal(US) or gal(UK)",
        "FLOW | 4 L | is a volume | a flow such as \"4 L/min\"",
        "HEAD | 2 bar | is a pressure | a head of water such as \"3.2 m\"",
        "PRESSURE | 2 m | is a length | a pressure such as \"3 bar\"",
        "TIME | 5 minutes | no unit known here | a time such as \"10 min\"",
        "LENGTH | 5 Mm | capitals matter: mm | a length such as \"32 mm\"",
        "VOLUME | 5 ML | capitals matter: mL | a volume such as \"120 L\"",
        "LENGTH | 1,5 m | has a comma | a length such as \"32 mm\"",
        "LENGTH | NaN m | does not begin with a number | a length such as \"32 mm\"",
        "LENGTH | 32 mm | a space that is none from the keyboard (U+00A0) | a length such as",
        "LENGTH | −32 mm | a dash that is no minus from the keyboard (U+2212) | a length such as",
        "LENGTH | –32 mm | a dash that is no minus from the keyboard (U+2013) | a length such as",
        "LENGTH | ３２ mm | a digit that is none of 0 to 9 (U+FF13) | a length such as",
        "LENGTH | 1.2.3 m | is no number | a length such as \"32 mm\"",
        "LENGTH | 1/0 m | is not a finite number | a length such as \"32 mm\"",
        "LENGTH | 1e999 m | is not a finite number | a length such as \"32 mm\"",
        "LENGTH | 5 km | no unit known here | a length such as \"32 mm\"; units are mm, cm, m, in, ft",
        "HEAD | 5 yd | no unit known here | units are mm, cm, m, in, ft",
        "LENGTH | 1e30 mm | absurdly large | a length such as \"32 mm\", from 0.0001 mm to 1000 m",
        "FRACTION | 1e9 | absurdly large | a fraction such as \"50 %\", from 0.0000001 % to 1000 %",
        "TEMPERATURE | 99 °C | absurdly large | a temperature such as \"25 °C\"",
        "TEMPERATURE | -40 °F | absurdly small | a temperature such as \"25 °C\"",
        "MASS | 1e12 kg | absurdly large | a mass such as \"60 kg\"",
        "NUMBER | 3 mm | is a length | a plain number such as 1.5",
        "FRACTION | fifty % | does not begin with a number | a fraction such as \"50 %\"",
      })
  void anythingElseIsToldWithWhatWouldBeRight(
      QuantityKind kind, String text, String found, String wanted) {
    assertThat(QuantityText.parse(kind, text))
        .isInstanceOfSatisfying(
            QuantityText.Parsed.Unfit.class,
            unfit -> {
              assertThat(unfit.found()).contains("'").contains(found);
              assertThat(unfit.wanted()).contains(wanted);
            });
  }

  @Property
  void anInchIsTheSameInAnyUnit(
      @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 1000) double inches) {
    double inside = value(QuantityKind.LENGTH, inches + " in");
    assertThat(value(QuantityKind.LENGTH, inches * 25.4 + " mm"))
        .isCloseTo(inside, within(inside * 1e-9));
    assertThat(value(QuantityKind.LENGTH, inches / 12 + " ft"))
        .isCloseTo(inside, within(inside * 1e-9));
  }

  @ParameterizedTest
  @EnumSource
  void theRangeThatIsToldIsTheRangeThatIsTaken(QuantityKind kind) {
    String[] ends = kind.range().replace("from ", "").split(" to ", -1);
    assertThat(value(kind, ends[0])).isCloseTo(kind.smallest(), withinPercentage(1e-9));
    assertThat(value(kind, ends[1])).isCloseTo(kind.largest(), withinPercentage(1e-9));
  }

  /** Twelve digits of 100 m³/s, 50 °C and 1000 m in other units, the last of them rounded up. */
  @ParameterizedTest
  @CsvSource({
    "FLOW, 1585032.31415 gpm, 100",
    "TEMPERATURE, 122.000000000001 °F, 50",
    "LENGTH, 39370.0787402 in, 1000",
    "LENGTH, -39370.0787402 in, -1000",
  })
  void aLimitInAnotherUnitIsThatLimitWhateverItsRounding(
      QuantityKind kind, String text, double limit) {
    assertThat(value(kind, text)).isEqualTo(limit);
  }

  @ParameterizedTest
  @CsvSource({"FLOW, 1585032.4 gpm, large", "TEMPERATURE, 31.9 °F, small"})
  void whatIsBeyondALimitByMoreThanRoundingIsRefused(
      QuantityKind kind, String text, String absurdly) {
    assertThat(QuantityText.parse(kind, text))
        .isInstanceOfSatisfying(
            QuantityText.Parsed.Unfit.class,
            unfit -> assertThat(unfit.found()).contains("absurdly " + absurdly));
  }

  private static double value(QuantityKind kind, String text) {
    return switch (QuantityText.parse(kind, text)) {
      case QuantityText.Parsed.Value value -> value.inside();
      case QuantityText.Parsed.Unfit unfit -> throw new AssertionError(unfit);
    };
  }
}
