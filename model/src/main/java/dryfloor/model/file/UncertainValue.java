package dryfloor.model.file;

import dryfloor.model.unit.QuantityKind;
import dryfloor.model.unit.Units;
import java.math.BigDecimal;
import java.math.MathContext;

/**
 * One thing about a drawing that is known within limits only: a quantity, or the quantities of a
 * list of pairs (a pump's curve, the points of a table) that are off together.
 *
 * @param of id of the element or part that has it; empty for the installation itself
 * @param field where it stands in it: {@code level}, {@code shape.box.height}, {@code curve}
 * @param kind of quantity; of several, that of the first
 * @param drawn the value as it is written, in the unit inside; of several, the first
 * @param plusMinus how far that may be off either way
 * @param measuredFrom what a height hangs on, as it is written with a space before it; or empty
 * @param quantities how many are off together
 */
public record UncertainValue(
    String of,
    String field,
    QuantityKind kind,
    double drawn,
    double plusMinus,
    String measuredFrom,
    int quantities) {

  private static final MathContext READABLE = new MathContext(5);

  /** A short id to name it by: "sump.level". */
  public String id() {
    return of.isEmpty() ? field : of + "." + field;
  }

  /**
   * The value somewhere between its ends, as a person writes it; of several, where they are.
   *
   * @param share -1 at the lower end, 0 as drawn, 1 at the upper end
   */
  public String text(double share, Units units) {
    if (quantities == 1) {
      return written(at(share), units) + measuredFrom;
    }
    if (share == 0) {
      return "as drawn";
    }
    String end = share < 0 ? "lower" : "upper";
    return Math.abs(share) == 1
        ? "at the " + end + " ends"
        : Math.round(Math.abs(share) * 100) + " % of the way to the " + end + " ends";
  }

  private String written(double inside, Units units) {
    String exact = new Spelling(units).quantity(kind, inside);
    int space = exact.indexOf(' ');
    String number = space < 0 ? exact : exact.substring(0, space);
    BigDecimal rounded = new BigDecimal(number).round(READABLE).stripTrailingZeros();
    String digits = rounded.signum() == 0 ? "0" : rounded.toPlainString();
    return space < 0 ? digits : digits + exact.substring(space);
  }

  /**
   * The value somewhere between its ends.
   *
   * @param share -1 at the lower end, 0 as drawn, 1 at the upper end
   */
  public double at(double share) {
    return drawn + share * plusMinus;
  }
}
