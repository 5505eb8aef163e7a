package dryfloor.model;

/**
 * How far a quantity of the drawing may be off, on either side of what is drawn.
 *
 * @param of id of the element or part that has the quantity; empty for the installation itself
 * @param field where the quantity stands in it, as a file names it: {@code level}, {@code
 *     shape.box.height}, {@code curve[1][0]}
 * @param spread how far it may be off
 */
public record Tolerance(String of, String field, Spread spread) {

  /** A distance from the value that is drawn; always above zero. */
  public sealed interface Spread {

    /** So much either way, in the unit inside. */
    record Amount(double plusMinus) implements Spread {}

    /** Such a share of the value itself either way, 1 being all of it. */
    record Share(double plusMinus) implements Spread {}

    /** So much either way of this value, in the unit inside. */
    default double around(double value) {
      return switch (this) {
        case Amount amount -> amount.plusMinus();
        case Share share -> Math.abs(value) * share.plusMinus();
      };
    }
  }
}
