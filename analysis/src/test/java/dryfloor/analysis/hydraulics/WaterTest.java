package dryfloor.analysis.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dryfloor.model.unit.QuantityKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class WaterTest {

  @Test
  void boilsTheSameWithSaltAsWithout() {
    assertThat(Water.at(20.0, 35.0).vapourPressure())
        .isEqualTo(Water.at(20.0, 0.0).vapourPressure());
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
