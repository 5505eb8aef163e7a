package dryfloor.model.unit;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads quantities as people write them: "32 mm", "1 1/4 in", "300 gal(US)", "4 L/min", "25 °C",
 * "50 %". The bare word "gal" is refused because it says nothing about which gallon.
 */
public final class QuantityText {

  private static final Pattern PARTS =
      Pattern.compile("([-+]?[0-9.,]+(?:[eE][-+]?\\d+)?(?:[ -]\\d+/\\d+|/\\d+)?)\\s*(.*)");
  private static final Pattern DECIMAL =
      Pattern.compile("[-+]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][-+]?\\d+)?");
  private static final Pattern FRACTION = Pattern.compile("([-+]?)(?:(\\d+)[ -])?(\\d+)/(\\d+)");

  /** A limit that is written in another unit may lie beyond itself by rounding: it is the limit. */
  private static final double BILLIONTH = 1e-9;

  private static final int MINUS = 0x2212;

  private QuantityText() {}

  /** What a text turned out to be. */
  public sealed interface Parsed {

    /** A value in the unit inside (SI, °C, g/kg, fraction of one). */
    record Value(double inside) implements Parsed {}

    /**
     * Not a quantity of the kind asked for.
     *
     * @param found what it is, as a sentence without its full stop: "'32 kg' is a mass"
     * @param wanted what would be right, to follow on "is" or "write": "a length such as "32 mm""
     */
    record Unfit(String found, String wanted) implements Parsed {}
  }

  /** A number and the symbol behind it, empty where there is none. */
  record Written(double number, String symbol) {}

  /** What a text consists of, if it begins with a number. */
  static Optional<Written> written(String text) {
    Matcher parts = PARTS.matcher(text.strip());
    return parts.matches()
        ? number(parts.group(1)).map(value -> new Written(value, symbol(parts)))
        : Optional.empty();
  }

  private static String symbol(Matcher parts) {
    return parts.group(2).strip().replace(" (", "(");
  }

  /** Reads a text as a quantity of this kind; anything finite and of sensible size will do. */
  public static Parsed parse(QuantityKind kind, String text) {
    return parse(kind, text, false);
  }

  /** Reads a text as the difference of two quantities of this kind, which knows no zero point. */
  static Parsed difference(QuantityKind kind, String text) {
    return parse(kind, text, true);
  }

  private static Parsed parse(QuantityKind kind, String text, boolean difference) {
    Optional<String> strange = strangeCharacter(text);
    if (strange.isPresent()) {
      return unfit(kind, "'" + text + "' has " + strange.get());
    }
    Matcher parts = PARTS.matcher(text.strip());
    if (!parts.matches()) {
      return unfit(kind, "'" + text + "' does not begin with a number");
    }
    Optional<Double> value = number(parts.group(1));
    if (value.isEmpty()) {
      return notANumber(kind, text);
    }
    String symbol = symbol(parts);
    return symbol.isEmpty()
        ? withoutUnit(kind, text, value.get())
        : withUnit(kind, text, value.get(), symbol, difference);
  }

  /**
   * Judges a plain number as a quantity of this kind.
   *
   * @param written how the number was written, for the message
   */
  public static Parsed parse(QuantityKind kind, double number, String written) {
    return Double.isFinite(number)
        ? withoutUnit(kind, written, number)
        : unfit(kind, "'" + written + "' is not a finite number");
  }

  /**
   * A value inside, expressed in this unit: what stands before the symbol when it is written.
   *
   * @param symbol of a unit for this kind; empty for a plain number
   * @throws IllegalArgumentException if the unit does not measure this kind
   */
  public static double inUnit(QuantityKind kind, String symbol, double inside) {
    if (symbol.isEmpty() && kind.needsNoUnit()) {
      return inside;
    }
    return KnownUnit.find(symbol)
        .filter(unit -> kind.accepts(unit.kind()))
        .map(unit -> unit.fromInside(inside))
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "'" + symbol + "' does not measure " + kind.description()));
  }

  /** What looks right and is not: it comes with text copied from a page. */
  private static Optional<String> strangeCharacter(String text) {
    return text.codePoints()
        .filter(c -> c > '~')
        .mapToObj(
            c -> {
              String code = " (U+%04X)".formatted(c);
              if (Character.isSpaceChar(c)) {
                return "a space that is none from the keyboard" + code;
              }
              if (c == MINUS || Character.getType(c) == Character.DASH_PUNCTUATION) {
                return "a dash that is no minus from the keyboard" + code;
              }
              return Character.isDigit(c) ? "a digit that is none of 0 to 9" + code : "";
            })
        .filter(found -> !found.isEmpty())
        .findFirst();
  }

  private static Parsed withoutUnit(QuantityKind kind, String text, double value) {
    return kind.needsNoUnit()
        ? bounded(kind, text, value)
        : unfit(kind, "'" + text + "' has no unit");
  }

  private static Parsed withUnit(
      QuantityKind kind, String text, double value, String symbol, boolean difference) {
    Optional<KnownUnit> unit = KnownUnit.find(symbol);
    if (unit.isEmpty()) {
      return unknownUnit(kind, text, symbol);
    }
    double zero = difference ? unit.get().offset() : 0;
    return kind.accepts(unit.get().kind())
        ? bounded(kind, text, unit.get().toInside(value) - zero)
        : unfit(kind, "'" + text + "' is " + unit.get().kind().description());
  }

  private static Parsed bounded(QuantityKind kind, String text, double inside) {
    if (!Double.isFinite(inside)) {
      return unfit(kind, "'" + text + "' is not a finite number");
    }
    boolean temperature = kind == QuantityKind.TEMPERATURE;
    double size = temperature ? inside : Math.abs(inside);
    double slack = BILLIONTH * Math.abs(size);
    if (size - slack > kind.largest()) {
      return outOfRange(kind, text, "large");
    }
    boolean none = size == 0 && !temperature;
    if (size + slack < kind.smallest() && !none) {
      return outOfRange(kind, text, "small");
    }
    double fit = none ? 0 : Math.clamp(size, kind.smallest(), kind.largest());
    return new Parsed.Value(temperature ? fit : Math.copySign(fit, inside));
  }

  private static Parsed outOfRange(QuantityKind kind, String text, String how) {
    return new Parsed.Unfit(
        "'" + text + "' is absurdly " + how + " for " + kind.description(),
        kind.wanted() + ", " + kind.range());
  }

  private static Parsed unknownUnit(QuantityKind kind, String text, String symbol) {
    if (symbol.startsWith("gal")) {
      return new Parsed.Unfit(
          "'" + text + "' does not say which gallon",
          kind.description() + " in gal(US) or gal(UK)");
    }
    return KnownUnit.findIgnoringCapitals(symbol)
        .map(
            meant ->
                unfit(
                    kind,
                    "'"
                        + symbol
                        + "' in '"
                        + text
                        + "' is no unit (capitals matter: "
                        + meant.symbol()
                        + ")"))
        .orElseGet(
            () ->
                new Parsed.Unfit(
                    "'" + symbol + "' in '" + text + "' is no unit known here",
                    kind.wanted() + knownUnits(kind)));
  }

  private static String knownUnits(QuantityKind kind) {
    List<String> symbols = KnownUnit.symbolsOf(kind);
    return symbols.isEmpty() ? "" : "; units are " + String.join(", ", symbols);
  }

  private static Parsed notANumber(QuantityKind kind, String text) {
    return text.contains(",")
        ? unfit(kind, "'" + text + "' has a comma; decimals take a point, thousands no mark")
        : unfit(kind, "what '" + text + "' begins with is no number");
  }

  private static Parsed unfit(QuantityKind kind, String found) {
    return new Parsed.Unfit(found, kind.wanted());
  }

  private static Optional<Double> number(String text) {
    if (DECIMAL.matcher(text).matches()) {
      return Optional.of(Double.parseDouble(text));
    }
    Matcher fraction = FRACTION.matcher(text);
    if (!fraction.matches()) {
      return Optional.empty();
    }
    double whole = fraction.group(2) == null ? 0 : Double.parseDouble(fraction.group(2));
    double part = Double.parseDouble(fraction.group(3)) / Double.parseDouble(fraction.group(4));
    return Optional.of(fraction.group(1).equals("-") ? -(whole + part) : whole + part);
  }
}
