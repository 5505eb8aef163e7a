package dryfloor.analysis.simulation;

/** The simulation came to no answer that could be believed. The message says why and when. */
public final class NoAnswer extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final String reason;

  /**
   * Gives up.
   *
   * @param reason why, and when
   */
  public NoAnswer(String reason) {
    super(reason);
    this.reason = reason;
  }

  /** Why, and when. */
  public String reason() {
    return reason;
  }
}
