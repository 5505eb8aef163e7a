package dryfloor.analysis.sweep;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureCatalogue;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.model.Installation;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.stream.IntStream;

/** Answers failures of one installation. */
public final class Sweep {

  private Sweep() {}

  /**
   * Answers every single failure that the drawing can have.
   *
   * @param threads to use; the answers do not depend on it
   * @throws BaselineProblem if the installation spills or never settles when all is well
   * @throws CancellationException if {@code progress} ended it before normal operation had settled
   */
  public static SweepResult everyFailure(Installation installation, int threads, Progress progress)
      throws BaselineProblem {
    Inquiry inquiry = Inquiry.of(installation, progress::cancelled);
    return everyFailure(inquiry, threads, progress);
  }

  /** Answers every single failure of an installation that has settled. */
  public static SweepResult everyFailure(Inquiry inquiry, int threads, Progress progress) {
    List<Failure> failures = FailureCatalogue.of(inquiry.installation());
    FailureResult[] results = new FailureResult[failures.size()];
    Outcome normal = inquiry.normal();
    progress.settled(normal);
    Team.share(
        results.length,
        threads,
        progress,
        i -> {
          FailureResult result = inquiry.answerUnlessSkipped(failures.get(i));
          results[i] = result;
          progress.answered(result);
        });
    return new SweepResult(
        inquiry.installation(),
        normal,
        IntStream.range(0, results.length)
            .mapToObj(i -> Optional.ofNullable(results[i]).orElseGet(() -> notAsked(failures, i)))
            .toList());
  }

  private static FailureResult notAsked(List<Failure> failures, int i) {
    return new FailureResult.Unanswered(failures.get(i), "it was cancelled");
  }

  /**
   * Answers some failures at once, as one event: a hidden failure and its trigger, say.
   *
   * @throws BaselineProblem if the installation spills or never settles when all is well
   */
  public static FailureResult together(Installation installation, List<Failure> failures)
      throws BaselineProblem {
    return Inquiry.of(installation, Progress.NONE::cancelled).answer(failures);
  }
}
