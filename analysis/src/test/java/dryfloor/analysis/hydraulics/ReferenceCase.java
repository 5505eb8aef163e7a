package dryfloor.analysis.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/**
 * A number that somebody else published, beside the one the laws give.
 *
 * @param quantity what it is, with its unit
 * @param computed by the laws
 * @param expected by the source
 * @param tolerance greatest difference that the rounding or the stated accuracy of the source
 *     allows, in the unit of the quantity
 * @param kind what the source did to get it
 * @param seen how it came here
 * @param source author, year, place
 */
record ReferenceCase(
    String quantity,
    double computed,
    double expected,
    double tolerance,
    Kind kind,
    Seen seen,
    String source) {

  enum Kind {
    WORKED_EXAMPLE,
    MEASUREMENT,
    STANDARD,
    CLOSED_FORM,
    SECOND_FORMULA
  }

  enum Seen {
    IN_THE_DOCUMENT,
    IN_A_QUOTATION,
    FROM_MEMORY
  }

  void holds() {
    assertThat(computed).as(toString()).isCloseTo(expected, within(tolerance));
  }

  /** Begins a case; the tolerance is a fraction of the expected value. */
  static Expected expect(String quantity, double expected, double relativeTolerance) {
    return new Expected(quantity, expected, Math.abs(expected) * relativeTolerance);
  }

  @Override
  public String toString() {
    return quantity + " = " + expected + " (" + kind + ", " + seen + ": " + source + ")";
  }

  record Expected(String quantity, double expected, double tolerance) {

    ReferenceCase from(Kind kind, Seen seen, String source, double computed) {
      return new ReferenceCase(quantity, computed, expected, tolerance, kind, seen, source);
    }

    ReferenceCase workedExample(String source, double computed) {
      return from(Kind.WORKED_EXAMPLE, Seen.IN_A_QUOTATION, source, computed);
    }
  }
}
