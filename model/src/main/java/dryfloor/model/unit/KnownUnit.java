package dryfloor.model.unit;

import static javax.measure.MetricPrefix.KILO;
import static javax.measure.MetricPrefix.MICRO;
import static javax.measure.MetricPrefix.MILLI;
import static tech.units.indriya.AbstractUnit.ONE;
import static tech.units.indriya.unit.Units.CELSIUS;
import static tech.units.indriya.unit.Units.CUBIC_METRE;
import static tech.units.indriya.unit.Units.DAY;
import static tech.units.indriya.unit.Units.GRAM;
import static tech.units.indriya.unit.Units.HOUR;
import static tech.units.indriya.unit.Units.KELVIN;
import static tech.units.indriya.unit.Units.KILOGRAM;
import static tech.units.indriya.unit.Units.LITRE;
import static tech.units.indriya.unit.Units.METRE;
import static tech.units.indriya.unit.Units.MINUTE;
import static tech.units.indriya.unit.Units.PASCAL;
import static tech.units.indriya.unit.Units.PERCENT;
import static tech.units.indriya.unit.Units.SECOND;
import static tech.units.indriya.unit.Units.SQUARE_METRE;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.IncommensurableException;
import javax.measure.Unit;
import javax.measure.UnitConverter;

/**
 * A unit that may be written in a file: a value in it is {@code scale · value + offset} inside.
 * Some may be written in several ways, of which one is usual.
 *
 * <p>Definitions: inch 25.4 mm, pound 0.453 592 37 kg (International Yard and Pound Agreement,
 * 1959); US gallon 231 in³; UK gallon 4.546 09 L (Weights and Measures Act 1985); psi from the
 * pound and standard gravity 9.806 65 m/s²; Kv = 0.865 Cv (IEC 60534-1). All from memory.
 */
record KnownUnit(String symbol, QuantityKind kind, double scale, double offset, boolean usual) {

  private static final Map<String, KnownUnit> BY_SYMBOL = new LinkedHashMap<>();

  static {
    Unit<?> inch = METRE.multiply(0.0254);
    Unit<?> foot = METRE.multiply(0.3048);
    Unit<?> gallonUs = CUBIC_METRE.multiply(231).multiply(0.0254 * 0.0254 * 0.0254);
    Unit<?> gallonUk = LITRE.multiply(4.54609);
    know(QuantityKind.LENGTH, METRE, MILLI(METRE), "mm");
    know(QuantityKind.LENGTH, METRE, METRE.divide(100), "cm");
    know(QuantityKind.LENGTH, METRE, METRE, "m");
    know(QuantityKind.LENGTH, METRE, inch, "in", "inch");
    know(QuantityKind.LENGTH, METRE, foot, "ft");
    know(QuantityKind.LENGTH, METRE, MICRO(METRE), "µm", "um");
    know(QuantityKind.HEAD, METRE, METRE, "mH2O", "m head");
    know(QuantityKind.HEAD, METRE, foot, "ftH2O", "ft head");
    know(QuantityKind.AREA, SQUARE_METRE, SQUARE_METRE, "m2", "m²");
    know(QuantityKind.AREA, SQUARE_METRE, SQUARE_METRE.divide(1e4), "cm2", "cm²");
    know(QuantityKind.AREA, SQUARE_METRE, SQUARE_METRE.divide(1e6), "mm2", "mm²");
    know(QuantityKind.AREA, SQUARE_METRE, inch.multiply(inch), "in2", "in²");
    know(QuantityKind.AREA, SQUARE_METRE, foot.multiply(foot), "ft2", "ft²");
    know(QuantityKind.VOLUME, CUBIC_METRE, LITRE, "L", "l");
    know(QuantityKind.VOLUME, CUBIC_METRE, MILLI(LITRE), "mL", "ml");
    know(QuantityKind.VOLUME, CUBIC_METRE, CUBIC_METRE, "m3", "m³");
    know(QuantityKind.VOLUME, CUBIC_METRE, gallonUs, "gal(US)");
    know(QuantityKind.VOLUME, CUBIC_METRE, gallonUk, "gal(UK)");
    Unit<?> flow = CUBIC_METRE.divide(SECOND);
    know(QuantityKind.FLOW, flow, LITRE.divide(MINUTE), "L/min", "l/min");
    know(QuantityKind.FLOW, flow, LITRE.divide(HOUR), "L/h", "l/h");
    know(QuantityKind.FLOW, flow, LITRE.divide(SECOND), "L/s", "l/s");
    know(QuantityKind.FLOW, flow, LITRE.divide(DAY), "L/d", "l/d");
    know(QuantityKind.FLOW, flow, MILLI(LITRE).divide(MINUTE), "mL/min", "ml/min");
    know(QuantityKind.FLOW, flow, CUBIC_METRE.divide(HOUR), "m3/h", "m³/h");
    know(QuantityKind.FLOW, flow, flow, "m3/s", "m³/s");
    know(QuantityKind.FLOW, flow, gallonUs.divide(MINUTE), "gpm", "gpm(US)");
    know(QuantityKind.FLOW, flow, gallonUs.divide(HOUR), "gph", "gph(US)");
    know(QuantityKind.FLOW, flow, gallonUs.divide(DAY), "gpd", "gpd(US)");
    know(QuantityKind.PRESSURE, PASCAL, PASCAL, "Pa");
    know(QuantityKind.PRESSURE, PASCAL, KILO(PASCAL), "kPa");
    know(QuantityKind.PRESSURE, PASCAL, PASCAL.multiply(100), "mbar");
    know(QuantityKind.PRESSURE, PASCAL, PASCAL.multiply(1e5), "bar");
    know(
        QuantityKind.PRESSURE,
        PASCAL,
        PASCAL.multiply(0.45359237 * 9.80665 / (0.0254 * 0.0254)),
        "psi");
    know(QuantityKind.TIME, SECOND, SECOND, "s");
    know(QuantityKind.TIME, SECOND, MINUTE, "min");
    know(QuantityKind.TIME, SECOND, HOUR, "h");
    know(QuantityKind.TIME, SECOND, DAY, "d");
    know(QuantityKind.TEMPERATURE, CELSIUS, CELSIUS, "°C", "C");
    Unit<?> fahrenheit = KELVIN.multiply(5).divide(9).shift(459.67);
    know(QuantityKind.TEMPERATURE, CELSIUS, fahrenheit, "°F", "F");
    know(QuantityKind.SALINITY, ONE, ONE, "g/kg", "ppt", "‰");
    know(QuantityKind.MASS, KILOGRAM, KILOGRAM, "kg");
    know(QuantityKind.MASS, KILOGRAM, GRAM, "g");
    know(QuantityKind.MASS, KILOGRAM, KILOGRAM.multiply(1000), "t");
    know(QuantityKind.MASS, KILOGRAM, KILOGRAM.multiply(0.45359237), "lb");
    know(QuantityKind.VALVE_COEFFICIENT, ONE, ONE, "Kv", "m3/h Kv");
    know(QuantityKind.VALVE_COEFFICIENT, ONE, ONE.multiply(0.865), "Cv");
    know(QuantityKind.FRACTION, ONE, PERCENT, "%");
  }

  private static void know(QuantityKind kind, Unit<?> inside, Unit<?> unit, String... symbols) {
    try {
      UnitConverter converter = unit.getConverterToAny(inside);
      double offset = converter.convert(0.0);
      double scale = converter.convert(1.0) - offset;
      for (String symbol : symbols) {
        BY_SYMBOL.put(
            symbol, new KnownUnit(symbol, kind, scale, offset, symbol.equals(symbols[0])));
      }
    } catch (IncommensurableException e) {
      throw new IllegalStateException(unit + " does not measure " + kind.description(), e);
    }
  }

  /** The unit that is written so, capitals mattering. */
  static Optional<KnownUnit> find(String symbol) {
    return Optional.ofNullable(BY_SYMBOL.get(symbol));
  }

  /** The unit that is written so but for its capitals. */
  static Optional<KnownUnit> findIgnoringCapitals(String symbol) {
    return BY_SYMBOL.values().stream()
        .filter(unit -> unit.symbol().equalsIgnoreCase(symbol))
        .findFirst();
  }

  /** The usual way to write each unit in which this may be written. */
  static List<String> symbolsOf(QuantityKind kind) {
    return BY_SYMBOL.values().stream()
        .filter(unit -> kind.accepts(unit.kind()) && unit.usual())
        .map(KnownUnit::symbol)
        .toList();
  }

  double toInside(double value) {
    return scale * value + offset;
  }

  double fromInside(double value) {
    return (value - offset) / scale;
  }
}
