package dryfloor.model.unit;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;

/**
 * Writes quantities the way a builder wants to read them: whole millimetres or hundredths of an
 * inch, litres or US gallons with one decimal below a hundred.
 *
 * <p>Every method takes the value inside (SI, °C, g/kg). A value that is not finite is shown as
 * "–".
 */
public record QuantityFormat(Units units) {

  private static final String NONE = "–";

  /** A height, depth or margin (m) in whole mm or inches to a hundredth. */
  public String level(double metres) {
    return switch (units) {
      case METRIC -> rounded(metres, "mm", 0);
      case US -> rounded(metres, "in", 2);
    };
  }

  /** An elevation or pipe length (m) in m or ft to a hundredth. */
  public String length(double metres) {
    return switch (units) {
      case METRIC -> rounded(metres, "m", 2);
      case US -> rounded(metres, "ft", 2);
    };
  }

  /** An area (m²). */
  public String area(double squareMetres) {
    return switch (units) {
      case METRIC -> adaptive(squareMetres, "m2");
      case US -> adaptive(squareMetres, "ft2");
    };
  }

  /** A volume (m³) in L or US gallons. */
  public String volume(double cubicMetres) {
    return switch (units) {
      case METRIC -> adaptive(cubicMetres, "L");
      case US -> adaptive(cubicMetres, "gal(US)");
    };
  }

  /** A flow (m³/s) in L/min or US gallons per minute. */
  public String flow(double cubicMetresPerSecond) {
    return switch (units) {
      case METRIC -> adaptive(cubicMetresPerSecond, "L/min");
      case US -> adaptive(cubicMetresPerSecond, "gpm");
    };
  }

  /** A pressure (Pa) in bar or psi. */
  public String pressure(double pascals) {
    return switch (units) {
      case METRIC -> rounded(pascals, "bar", 2);
      case US -> rounded(pascals, "psi", 1);
    };
  }

  /** A head of water (m) in m or ft. */
  public String head(double metres) {
    return length(metres);
  }

  /** A water temperature (°C). */
  public String temperature(double celsius) {
    return switch (units) {
      case METRIC -> rounded(celsius, "°C", 1);
      case US -> rounded(celsius, "°F", 1);
    };
  }

  /** A salinity (g/kg). */
  public String salinity(double gramsPerKilogram) {
    return rounded(gramsPerKilogram, "g/kg", 1);
  }

  /** A mass (kg) in kg or lb. */
  public String mass(double kilograms) {
    return switch (units) {
      case METRIC -> adaptive(kilograms, "kg");
      case US -> adaptive(kilograms, "lb");
    };
  }

  /** A fraction of one in whole percent. */
  public String fraction(double fraction) {
    return rounded(fraction, "%", 0);
  }

  /** A time (s) in its two largest units: "41 s", "4 min 10 s", "3 h 20 min", "2 d 6 h". */
  public String time(double seconds) {
    if (!Double.isFinite(seconds)) {
      return NONE;
    }
    if (seconds < 0) {
      return "-" + time(-seconds);
    }
    if (seconds < 10 && seconds != Math.rint(seconds)) {
      return rounded(seconds, "s", 1);
    }
    long whole = Math.round(seconds);
    if (whole < 60) {
      return whole + " s";
    }
    if (whole < 3600) {
      return two(whole, 60, "min", 1, "s");
    }
    long wholeMinutes = Math.round(seconds / 60) * 60;
    if (wholeMinutes < 86_400) {
      return two(wholeMinutes, 3600, "h", 60, "min");
    }
    return two(Math.round(seconds / 3600) * 3600, 86_400, "d", 3600, "h");
  }

  private static String two(long seconds, long large, String big, long small, String little) {
    long rest = seconds % large / small;
    String head = seconds / large + " " + big;
    return rest == 0 ? head : head + " " + rest + " " + little;
  }

  private static String adaptive(double inside, String symbol) {
    double shown = Math.abs(unit(symbol).fromInside(inside));
    int decimals = shown >= 99.95 ? 0 : shown >= 0.995 || shown == 0 ? 1 : 2;
    return rounded(inside, symbol, decimals);
  }

  private static String rounded(double inside, String symbol, int decimals) {
    double shown = unit(symbol).fromInside(inside);
    if (!Double.isFinite(shown)) {
      return NONE;
    }
    BigDecimal value = BigDecimal.valueOf(shown).setScale(decimals, RoundingMode.HALF_UP);
    String sign = value.signum() < 0 ? "-" : "";
    return sign + String.format(Locale.ROOT, "%." + decimals + "f", value.abs()) + " " + symbol;
  }

  private static KnownUnit unit(String symbol) {
    return KnownUnit.find(symbol).orElseThrow();
  }
}
