package dryfloor.analysis.worksheet;

import dryfloor.analysis.outcome.Ending;
import dryfloor.analysis.outcome.Outcome;

/**
 * How grave an outcome is, from the water on floors. The steps are common practice; where the lines
 * between them lie is for the user to say.
 *
 * @param some water on floors (m³) up to which a wet floor is mopped up, positive
 * @param much water on floors (m³) from which on it is a flood, above {@code some}
 */
public record SeverityScale(double some, double much) {

  /** A bucket of 10 L, and 100 L. */
  public static final SeverityScale USUAL = new SeverityScale(0.010, 0.100);

  /**
   * A scale with these lines.
   *
   * @throws IllegalArgumentException if they are not above zero and rising
   */
  public SeverityScale {
    if (!(some > 0) || !(much > some) || Double.isInfinite(much)) {
      throw new IllegalArgumentException(
          "a scale of severity with lines at "
              + some
              + " m³ and "
              + much
              + " m³; both must be above zero, the second above the first");
    }
  }

  /** How grave this outcome is. */
  public Severity of(Outcome outcome) {
    return switch (outcome.verdict()) {
      case DRY -> Severity.NO_EFFECT;
      case CAUGHT -> Severity.CAUGHT;
      case WET -> ofWet(outcome);
    };
  }

  private Severity ofWet(Outcome outcome) {
    double water = Math.max(outcome.reachedFloors(), outcome.beyond());
    if (water >= much || outcome.ending() instanceof Ending.Continues) {
      return Severity.MUCH_WATER;
    }
    return water > some ? Severity.WATER : Severity.SOME_WATER;
  }
}
