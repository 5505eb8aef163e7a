package dryfloor.model.unit;

import dryfloor.model.Tolerance.Spread;
import dryfloor.model.unit.QuantityText.Written;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads quantities that may be known within limits only: "120 mm ± 5 mm" (or "+/-"), "40 L/min ± 10
 * %", "8 mm to 12 mm", whose middle is then the value that is drawn. A unit that is written once,
 * at the end, holds for both numbers.
 */
public final class UncertainText {

  private static final Pattern AROUND = Pattern.compile("(.*?)\\s*(?:±|\\+/-)\\s*(.*)");
  private static final Pattern RANGE = Pattern.compile("(.*?)\\s+to\\s+(.*)");
  private static final MathContext TWELVE_DIGITS = new MathContext(12);
  private static final String PERCENT = "%";

  private UncertainText() {}

  /** What a text turned out to be. */
  public sealed interface Parsed {

    /** A value in the unit inside, and how far it may be off. */
    record Value(double inside, Optional<Spread> spread) implements Parsed {}

    /** Not a quantity of the kind asked for; the words are as in {@link QuantityText}. */
    record Unfit(String found, String wanted) implements Parsed {}
  }

  /** Reads a text as a quantity of this kind. */
  public static Parsed parse(QuantityKind kind, String text) {
    Matcher around = AROUND.matcher(text.strip());
    if (around.matches()) {
      return around(kind, nominal(kind, around.group(1), around.group(2)), around.group(2));
    }
    Matcher range = RANGE.matcher(text.strip());
    return range.matches()
        ? range(kind, nominal(kind, range.group(1), range.group(2)), range.group(2))
        : exact(kind, text, Optional.empty());
  }

  /** The number before the unit takes that of the tolerance or of the upper end. */
  private static String nominal(QuantityKind kind, String first, String second) {
    String unit = QuantityText.written(second).map(Written::symbol).orElse("");
    boolean alone = QuantityText.written(first).filter(w -> w.symbol().isEmpty()).isPresent();
    boolean share = unit.equals(PERCENT) && kind != QuantityKind.FRACTION;
    return alone && !unit.isEmpty() && !share ? first + " " + unit : first;
  }

  private static Parsed exact(QuantityKind kind, String text, Optional<Spread> spread) {
    return switch (QuantityText.parse(kind, text)) {
      case QuantityText.Parsed.Value value -> new Parsed.Value(value.inside(), spread);
      case QuantityText.Parsed.Unfit unfit -> new Parsed.Unfit(unfit.found(), unfit.wanted());
    };
  }

  private static Parsed around(QuantityKind kind, String nominal, String tolerance) {
    Optional<Written> written = QuantityText.written(tolerance);
    if (written.isEmpty()) {
      return unfit(kind, "no number stands behind ±");
    }
    double number = written.get().number();
    if (number <= 0) {
      return unfit(
          kind, "the tolerance '" + tolerance + "' is " + (number < 0 ? "negative" : "zero"));
    }
    if (written.get().symbol().equals(PERCENT) && kind != QuantityKind.FRACTION) {
      return share(kind, nominal, tolerance, number / 100);
    }
    return switch (QuantityText.difference(kind, tolerance)) {
      case QuantityText.Parsed.Value amount ->
          exact(kind, nominal, Optional.of(new Spread.Amount(amount.inside())));
      case QuantityText.Parsed.Unfit unfit -> unfit(kind, "of the tolerance, " + unfit.found());
    };
  }

  private static Parsed share(QuantityKind kind, String nominal, String tolerance, double share) {
    if (kind == QuantityKind.TEMPERATURE) {
      return unfit(kind, "a temperature has no percentage, as its zero is arbitrary");
    }
    return share > 1
        ? unfit(kind, "the tolerance '" + tolerance + "' is more than the value itself")
        : exact(kind, nominal, Optional.of(new Spread.Share(share)));
  }

  private static Parsed range(QuantityKind kind, String low, String high) {
    if (exact(kind, low, Optional.empty()) instanceof Parsed.Unfit unfit) {
      return unfit;
    }
    if (exact(kind, high, Optional.empty()) instanceof Parsed.Unfit unfit) {
      return unfit;
    }
    double from = inside(kind, low);
    double to = inside(kind, high);
    return from < to
        ? new Parsed.Value((from + to) / 2, Optional.of(new Spread.Amount((to - from) / 2)))
        : new Parsed.Unfit(
            "'" + low + " to " + high + "' does not go up",
            kind.description() + " from the lower end to the upper");
  }

  private static double inside(QuantityKind kind, String sound) {
    return ((QuantityText.Parsed.Value) QuantityText.parse(kind, sound)).inside();
  }

  private static Parsed unfit(QuantityKind kind, String found) {
    String tolerance = kind == QuantityKind.TEMPERATURE ? " ± 2 °C\"" : " ± 10 %\"";
    return new Parsed.Unfit(found, kind.description() + " such as \"" + kind.example() + tolerance);
  }

  /**
   * A text that was read, with an exact value in the place of the uncertain one.
   *
   * @param share where between the ends: -1 at the lower, 0 in the middle, 1 at the upper
   */
  public static String at(QuantityKind kind, String text, double share) {
    if (!(parse(kind, text) instanceof Parsed.Value value) || value.spread().isEmpty()) {
      return text;
    }
    Matcher around = AROUND.matcher(text.strip());
    Matcher range = RANGE.matcher(text.strip());
    String first =
        around.matches()
            ? nominal(kind, around.group(1), around.group(2))
            : range.matches() ? nominal(kind, range.group(1), range.group(2)) : text;
    String symbol = QuantityText.written(first).map(Written::symbol).orElse("");
    double end = value.inside() + share * value.spread().get().around(value.inside());
    return amount(QuantityText.inUnit(kind, symbol, end), symbol);
  }

  /** An exact text, as {@link QuantityText} reads it, with a tolerance behind it. */
  public static String with(Spread spread, String exact) {
    return exact
        + " ± "
        + switch (spread) {
          case Spread.Share share -> amount(share.plusMinus() * 100, PERCENT);
          case Spread.Amount amount -> {
            String symbol = QuantityText.written(exact).map(Written::symbol).orElse("");
            double scale = KnownUnit.find(symbol).map(KnownUnit::scale).orElse(1.0);
            yield amount(amount.plusMinus() / scale, symbol);
          }
        };
  }

  private static String amount(double number, String symbol) {
    BigDecimal rounded = new BigDecimal(number).round(TWELVE_DIGITS).stripTrailingZeros();
    String digits = rounded.signum() == 0 ? "0" : rounded.toPlainString();
    return symbol.isEmpty() ? digits : digits + " " + symbol;
  }
}
