package dryfloor.model.file;

import dryfloor.model.unit.QuantityKind;
import dryfloor.model.unit.QuantityText;
import dryfloor.model.unit.UncertainText;
import java.util.Optional;

/** Reads one quantity from a located value. */
final class QuantityValue {

  private QuantityValue() {}

  /**
   * The quantity in the unit inside, or not a number after a problem has been reported, which stops
   * every later comparison from reporting the same mistake again. A tolerance is noted.
   */
  static double read(Located value, String what, QuantityKind kind, Sign sign, Context context) {
    UncertainText.Parsed parsed =
        switch (value) {
          case Located.Text text -> UncertainText.parse(kind, text.text());
          case Located.Numeral number -> numeral(kind, number);
          case Located.Structure other -> noQuantity(other, kind);
          case Located.Sequence other -> noQuantity(other, kind);
          case Located.Truth other -> noQuantity(other, kind);
          case Located.Nothing other -> noQuantity(other, kind);
        };
    return switch (parsed) {
      case UncertainText.Parsed.Value fit -> {
        note(value, kind, fit, context);
        yield signed(value, fit.inside(), what, kind, sign, context.problems());
      }
      case UncertainText.Parsed.Unfit unfit -> {
        context.problems().add(value.place(), unfit.found(), wanted(what, kind, unfit.wanted()));
        yield Double.NaN;
      }
    };
  }

  private static void note(
      Located value, QuantityKind kind, UncertainText.Parsed.Value fit, Context context) {
    if (value instanceof Located.Text text && fit.spread().isPresent()) {
      context
          .uncertainTexts()
          .add(
              new UncertainTexts.Uncertain(
                  text.place(), text.text(), kind, false, fit.inside(), fit.spread().get()));
    }
  }

  private static UncertainText.Parsed numeral(QuantityKind kind, Located.Numeral number) {
    return switch (QuantityText.parse(kind, number.value(), number.literal())) {
      case QuantityText.Parsed.Value fit ->
          new UncertainText.Parsed.Value(fit.inside(), Optional.empty());
      case QuantityText.Parsed.Unfit unfit ->
          new UncertainText.Parsed.Unfit(unfit.found(), unfit.wanted());
    };
  }

  /** "bore is a length ...", but not "volume is a volume ...". */
  private static String wanted(String what, QuantityKind kind, String wanted) {
    return (kind.description().endsWith(" " + what) ? "write " : what + " is ") + wanted;
  }

  private static UncertainText.Parsed noQuantity(Located value, QuantityKind kind) {
    return new UncertainText.Parsed.Unfit(value.description() + " is no quantity", kind.wanted());
  }

  private static double signed(
      Located value, double inside, String what, QuantityKind kind, Sign sign, Problems problems) {
    boolean fits =
        switch (sign) {
          case ABOVE_ZERO -> inside > 0;
          case ZERO_OR_MORE -> inside >= 0;
          case ANY -> true;
        };
    if (fits) {
      return inside;
    }
    String limit = sign == Sign.ABOVE_ZERO ? " above zero, " : " of zero or more, ";
    problems.add(
        value.place(),
        value.description() + " is " + (inside < 0 ? "negative" : "zero"),
        wanted(what, kind, kind.description() + limit + "such as " + kind.quotedExample()));
    return Double.NaN;
  }
}
