package dryfloor.model.file;

import dryfloor.model.unit.QuantityKind;
import dryfloor.model.unit.QuantityText;
import dryfloor.model.unit.Units;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Spells quantities for a file: in the units that people use for them, to twelve digits, so that
 * what is read again differs by rounding only.
 */
record Spelling(Units units) {

  private static final MathContext TWELVE_DIGITS = new MathContext(12, RoundingMode.HALF_EVEN);

  String quantity(QuantityKind kind, double inside) {
    String symbol =
        switch (units) {
          case METRIC -> metric(kind, inside);
          case US -> us(kind, inside);
        };
    double value = QuantityText.inUnit(kind, symbol, inside);
    return digits(value) + (symbol.isEmpty() ? "" : " " + symbol);
  }

  /** A number with twelve digits at most and no trailing zeros. */
  static String digits(double value) {
    BigDecimal rounded = new BigDecimal(value).round(TWELVE_DIGITS).stripTrailingZeros();
    return rounded.signum() == 0 ? "0" : rounded.toPlainString();
  }

  private static String metric(QuantityKind kind, double inside) {
    return switch (kind) {
      case LENGTH -> Math.abs(inside) < 2 ? "mm" : "m";
      case AREA -> Math.abs(inside) < 1e-3 ? "mm2" : "m2";
      case VOLUME -> "L";
      case FLOW -> "L/min";
      case PRESSURE -> "bar";
      case HEAD -> "m";
      case TIME -> time(inside);
      case TEMPERATURE -> "°C";
      case SALINITY -> "g/kg";
      case MASS -> "kg";
      case VALVE_COEFFICIENT -> "Kv";
      case NUMBER -> "";
      case FRACTION -> "%";
    };
  }

  private static String us(QuantityKind kind, double inside) {
    return switch (kind) {
      case LENGTH -> "in";
      case AREA -> "ft2";
      case VOLUME -> "gal(US)";
      case FLOW -> "gpm";
      case PRESSURE -> "psi";
      case HEAD -> "ft";
      case TIME -> time(inside);
      case TEMPERATURE -> "°F";
      case SALINITY -> "ppt";
      case MASS -> "lb";
      case VALVE_COEFFICIENT -> "Cv";
      case NUMBER -> "";
      case FRACTION -> "%";
    };
  }

  private static String time(double seconds) {
    if (seconds >= 3600 && seconds % 3600 == 0) {
      return "h";
    }
    return seconds >= 60 && seconds % 60 == 0 ? "min" : "s";
  }
}
