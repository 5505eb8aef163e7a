package dryfloor.analysis.rehearsal;

import dryfloor.analysis.sweep.FailureResult;
import java.util.List;

/**
 * One failure to rehearse.
 *
 * @param result what is expected
 * @param means how it is brought about
 * @param readAfter time until the levels are to be read (s)
 * @param levels what is expected of each vessel, of trays and basins that must stay dry as well
 */
public record RehearsalStep(
    FailureResult.Answered result, Means means, double readAfter, List<ExpectedLevel> levels) {

  public RehearsalStep {
    levels = List.copyOf(levels);
  }

  /**
   * What is expected of a vessel; all of it elevations (m).
   *
   * @param before level before, which must fit before anything is switched off
   * @param expected level once all is still
   * @param abort level at which the rehearsal is broken off
   */
  public record ExpectedLevel(
      String vessel, double bottom, double rim, double before, double expected, double abort) {

    /** Whether it holds no water, neither before nor once all is still: look whether it is so. */
    public boolean staysDry() {
      return Math.max(before, expected) <= bottom + Rehearsal.DRY;
    }
  }
}
