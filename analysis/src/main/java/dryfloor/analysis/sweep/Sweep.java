package dryfloor.analysis.sweep;

import dryfloor.analysis.failure.Failure;
import dryfloor.model.Installation;
import java.util.List;

/** Answers failures of one installation. */
@SuppressWarnings("DoNotCallSuggester")
public final class Sweep {

  private Sweep() {}

  /**
   * Answers every single failure that the drawing can have.
   *
   * @param threads to use; the answers do not depend on it
   * @throws BaselineProblem if the installation spills or never settles when all is well
   */
  public static SweepResult everyFailure(Installation installation, int threads, Progress progress)
      throws BaselineProblem {
    throw new IllegalStateException("not there yet");
  }

  /**
   * Answers some failures at once, as one event: a hidden failure and its trigger, say.
   *
   * @throws BaselineProblem if the installation spills or never settles when all is well
   */
  public static FailureResult together(Installation installation, List<Failure> failures)
      throws BaselineProblem {
    throw new IllegalStateException("not there yet");
  }
}
