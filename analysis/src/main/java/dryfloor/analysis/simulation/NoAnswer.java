package dryfloor.analysis.simulation;

/** The simulation came to no answer that could be believed. The message says why and when. */
public final class NoAnswer extends RuntimeException {

  private static final long serialVersionUID = 1L;

  public NoAnswer(String message) {
    super(message);
  }
}
