package dryfloor.analysis.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dryfloor.model.unit.QuantityKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class WaterTest {

  /** EOS-80 speaks of IPTS-68 and practical salinity; the laws of ITS-90 and grams per kilogram. */
  private static Water onOldScales(double celsius68, double practicalSalinity) {
    return Water.at(celsius68 / 1.00024, practicalSalinity * 35.16504 / 35.0);
  }

  /**
   * Fofonoff and Millard, UNESCO Technical Papers in Marine Science 44 (1983), p. 19 and the table
   * on p. 23; standard, read in a scan of the document. Tolerance: the last printed digit.
   */
  @ParameterizedTest(name = "practical salinity {0} at {1} °C weighs {2} kg/m³ (UNESCO 44)")
  @CsvSource({
    " 0,  5,  999.96675, 5e-5",
    " 0, 25,  997.04796, 5e-5",
    "35,  5, 1027.67547, 5e-5",
    "35, 25, 1023.34306, 5e-5",
    "35,  0, 1028.1063, 1e-4",
    "35, 10, 1026.9524, 1e-4",
    "35, 20, 1024.7630, 1e-4",
    "35, 30, 1021.7286, 1e-4",
    "35, 40, 1017.9731, 1e-4"
  })
  void weighsWhatTheInternationalEquationOfStateSays(
      double salinity, double celsius, double expected, double tolerance) {
    assertThat(onOldScales(celsius, salinity).density()).isCloseTo(expected, within(tolerance));
  }

  /**
   * TEOS-10 example of the GSW toolbox (SA 34.7118 g/kg, 28.8099 °C conservative, 10 dbar);
   * standard, in a quotation. 0.06 kg/m³ is what EOS-80 at atmospheric pressure may differ by.
   */
  @Test
  void agreesWithTheYoungerEquationOfState() {
    double tenMetresDeeper = 0.045;
    assertThat(Water.at(28.8099, 34.7118).density() + tenMetresDeeper)
        .isCloseTo(1021.8404466, within(0.06));
  }

  /**
   * Pure water past the published range: 988.04 kg/m³ at 50 °C, 992.22 at 40 °C, handbook (Kell
   * 1975; from memory).
   */
  @ParameterizedTest(name = "fresh water at {0} °C weighs {1} kg/m³")
  @CsvSource({"40, 992.22", "50, 988.04"})
  void staysTrueALittleBeyondItsRange(double celsius, double expected) {
    assertThat(Water.at(celsius, 0.0).density()).isCloseTo(expected, within(0.05));
  }

  /**
   * Dynamic viscosity, Pa·s. 1.5 % is the accuracy that Sharqawy, Lienhard and Zubair (2010) state.
   * All in quotations.
   */
  @ParameterizedTest(name = "{1} g/kg at {0} °C: {2} Pa·s ({3})")
  @CsvSource({
    "20,  0, 0.0010016009522,  'IAPWS R12-08 (2008), evaluated at 998.2 kg/m³; second formula'",
    "25,  0, 0.0008897351,     'IAPWS R12-08 (2008), table 4, at 998 kg/m³; standard'",
    "25, 35, 0.00095614508563, 'Millero (1974), evaluated; second formula'",
    "25, 40, 0.00096541,       'Millero (1974), printed check value; standard'",
    "10, 30, 0.001383779,      'Dorsey (1940), table 87, by a fit; measurement'"
  })
  void isAsViscousAsOthersMeasured(
      double celsius, double salinity, double expected, String source) {
    Water water = Water.at(celsius, salinity);
    assertThat(water.kinematicViscosity() * water.density())
        .as(source)
        .isCloseTo(expected, within(0.015 * expected));
  }

  /** IAPWS R7-97(2012), table 35; standard, in a quotation that names the table. */
  @ParameterizedTest(name = "at {0} K it boils under {1} Pa (IAPWS-IF97 table 35)")
  @CsvSource({"300, 3536.58941", "500, 2638897.76", "600, 12344314.6"})
  void boilsUnderTheInternationalVapourPressure(double kelvin, double expected) {
    assertThat(Water.saturationPressure(kelvin)).isCloseTo(expected, within(5e-9 * expected));
  }

  /** Handbook rounding of the same formula: 2339.2 Pa at 20 °C; standard, from memory. */
  @Test
  void boilsAtRoomTemperatureUnderALittleOverTwoKilopascals() {
    assertThat(Water.at(20.0, 0.0).vapourPressure()).isCloseTo(2339.2, within(0.5));
    assertThat(Water.at(20.0, 35.0).vapourPressure()).isCloseTo(2339.2, within(0.5));
  }

  @Test
  void getsHeavierAndThickerWithSalt() {
    for (double salinity = 0.0; salinity < 80.0; salinity += 1.0) {
      Water fresher = Water.at(25.0, salinity);
      Water saltier = Water.at(25.0, salinity + 1.0);
      assertThat(saltier.density()).isGreaterThan(fresher.density());
      assertThat(saltier.kinematicViscosity()).isGreaterThan(fresher.kinematicViscosity());
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.1, 50.1, Double.NaN})
  void isRefusedAtTemperaturesNoLawCovers(double celsius) {
    assertThatThrownBy(() -> Water.at(celsius, 35.0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("between 0 and 50");
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.1, 80.1, Double.NaN})
  void isRefusedAtSalinitiesNoLawCovers(double salinity) {
    assertThatThrownBy(() -> Water.at(25.0, salinity))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("between 0 and 80");
  }

  @Test
  void isRefusedWithoutWeight() {
    assertThatThrownBy(() -> new Water(0.0, 1e-6, 2339.0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("density");
  }

  @ParameterizedTest
  @EnumSource(
      value = QuantityKind.class,
      names = {"TEMPERATURE", "SALINITY"})
  void everyWaterThatADrawingMayHaveIsKnown(QuantityKind kind) {
    for (double extreme : new double[] {kind.smallest(), kind.largest()}) {
      boolean warmth = kind == QuantityKind.TEMPERATURE;
      Water water = Water.at(warmth ? extreme : 25, warmth ? 35 : extreme);
      assertThat(water.density()).isBetween(980.0, 1070.0);
    }
  }
}
