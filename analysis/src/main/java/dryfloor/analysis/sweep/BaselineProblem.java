package dryfloor.analysis.sweep;

import dryfloor.analysis.outcome.Outcome;
import java.util.Optional;

/** The drawing does not work even when all is well: it spills, or never settles. */
public final class BaselineProblem extends Exception {

  private static final long serialVersionUID = 1L;

  private final transient Optional<Outcome> outcome;
  private final String element;

  /**
   * Reports a drawing that does not work.
   *
   * @param message what happens in normal operation and what would be right
   * @param outcome normal operation as far as it got, for the story of why
   * @param element id of what spills first or never settles; empty where that is not known
   */
  public BaselineProblem(String message, Optional<Outcome> outcome, String element) {
    super(message);
    this.outcome = outcome;
    this.element = element;
  }

  /** Id of what spills first or never settles; empty where that is not known. */
  public String element() {
    return element;
  }

  /** Normal operation as far as it got. */
  public Optional<Outcome> outcome() {
    return outcome;
  }
}
