package dryfloor.analysis.reference;

import java.util.function.DoubleUnaryOperator;

/** Asks a law the other way round, by halving. */
final class Search {

  private static final int HALVINGS = 200;

  private Search() {}

  /** Where a function that rises from {@code low} to {@code high} takes a value. */
  static double whereRises(DoubleUnaryOperator rising, double value, double low, double high) {
    if (rising.applyAsDouble(low) > value || rising.applyAsDouble(high) < value) {
      throw new IllegalArgumentException(
          "the function does not pass " + value + " between " + low + " and " + high);
    }
    double less = low;
    double more = high;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = 0.5 * (less + more);
      if (rising.applyAsDouble(middle) < value) {
        less = middle;
      } else {
        more = middle;
      }
    }
    return more;
  }
}
