package dryfloor.analysis.sweep;

import dryfloor.analysis.outcome.Outcome;
import java.util.Optional;

/** The drawing does not work even when all is well: it spills, or never settles. */
public final class BaselineProblem extends Exception {

  private static final long serialVersionUID = 1L;

  private final transient Optional<Outcome> outcome;

  /**
   * Reports a drawing that does not work.
   *
   * @param message what happens in normal operation and what would be right
   * @param outcome normal operation as far as it got, for the story of why
   */
  public BaselineProblem(String message, Optional<Outcome> outcome) {
    super(message);
    this.outcome = outcome;
  }

  /** Normal operation as far as it got. */
  public Optional<Outcome> outcome() {
    return outcome;
  }
}
