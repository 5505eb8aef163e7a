package dryfloor.model.file;

import dryfloor.model.unit.QuantityKind;
import dryfloor.model.unit.QuantityText;

/** Reads one quantity from a located value. */
final class QuantityValue {

  private QuantityValue() {}

  /**
   * The quantity in the unit inside, or not a number after a problem has been reported, which stops
   * every later comparison from reporting the same mistake again.
   */
  static double read(Located value, String what, QuantityKind kind, Sign sign, Problems problems) {
    QuantityText.Parsed parsed =
        switch (value) {
          case Located.Text text -> QuantityText.parse(kind, text.text());
          case Located.Numeral number -> QuantityText.parse(kind, number.value(), number.literal());
          case Located.Structure other -> noQuantity(other, kind);
          case Located.Sequence other -> noQuantity(other, kind);
          case Located.Truth other -> noQuantity(other, kind);
          case Located.Nothing other -> noQuantity(other, kind);
        };
    return switch (parsed) {
      case QuantityText.Parsed.Value fit -> signed(value, fit.inside(), what, kind, sign, problems);
      case QuantityText.Parsed.Unfit unfit -> {
        problems.add(value.place(), unfit.found(), wanted(what, kind, unfit.wanted()));
        yield Double.NaN;
      }
    };
  }

  /** "bore is a length ...", but not "volume is a volume ...". */
  private static String wanted(String what, QuantityKind kind, String wanted) {
    return (kind.description().endsWith(" " + what) ? "write " : what + " is ") + wanted;
  }

  private static QuantityText.Parsed noQuantity(Located value, QuantityKind kind) {
    return new QuantityText.Parsed.Unfit(value.description() + " is no quantity", kind.wanted());
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
