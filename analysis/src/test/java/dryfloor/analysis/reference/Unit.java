package dryfloor.analysis.reference;

import java.util.Arrays;

/** Units in which sources print their answers. */
enum Unit {
  NONE("1", 1.0),
  KILOGRAM_PER_CUBIC_METRE("kg/m3", 1.0),
  PASCAL_SECOND("Pa s", 1.0),
  PASCAL("Pa", 1.0),
  KILOPASCAL("kPa", 1e3),
  POUND_PER_SQUARE_INCH("psi", 6894.757293168361),
  METRE("m", 1.0),
  FOOT("ft", 0.3048),
  SECOND("s", 1.0),
  MINUTE("min", 60.0),
  METRE_PER_SECOND("m/s", 1.0),
  FOOT_PER_SECOND("ft/s", 0.3048),
  CUBIC_METRE_PER_SECOND("m3/s", 1.0),
  LITRE_PER_SECOND("L/s", 1e-3),
  LITRE_PER_MINUTE("L/min", 1e-3 / 60.0),
  CUBIC_METRE_PER_MINUTE("m3/min", 1.0 / 60.0),
  CUBIC_FOOT_PER_SECOND("ft3/s", 0.028316846592),
  US_GALLON_PER_MINUTE("US gal/min", 3.785411784e-3 / 60.0),
  SQUARE_METRE("m2", 1.0),
  PER_CENT("%", 0.01),
  /** Of Francis' constant: flow over length and head^1.5. */
  ROOT_FOOT_PER_SECOND("ft^0.5/s", 0.5520868594),
  ROOT_METRE_PER_SECOND("m^0.5/s", 1.0),
  /** Of a Kv, which is defined in this unit. */
  KV("m3/h at 1 bar", 1.0),
  CV("US gal/min at 1 psi", 1.0);

  private final String symbol;
  private final double inSi;

  Unit(String symbol, double inSi) {
    this.symbol = symbol;
    this.inSi = inSi;
  }

  /**
   * The unit written so.
   *
   * @throws IllegalArgumentException if there is none
   */
  static Unit of(String symbol) {
    return Arrays.stream(values())
        .filter(unit -> unit.symbol.equals(symbol))
        .findFirst()
        .orElseThrow(
            () -> new IllegalArgumentException("no unit is written '" + symbol + "'; see Unit"));
  }

  double fromSi(double value) {
    return value / inSi;
  }

  /** The number with its unit, as one would say it. */
  String with(String number) {
    return this == NONE ? number : number + " " + symbol;
  }
}
