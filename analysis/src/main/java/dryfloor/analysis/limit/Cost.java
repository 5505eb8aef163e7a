package dryfloor.analysis.limit;

import dryfloor.analysis.comparison.Changes;
import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.sweep.FailureResult;
import java.util.List;

/** What a change makes worse, though it wets no floor. */
public sealed interface Cost {

  /**
   * Other failures end worse than today: water that is caught now and was not before, or less room
   * below a rim.
   *
   * @param changes the greatest first, at least one
   */
  record EndWorse(List<Changes.Change> changes) implements Cost {
    public EndWorse {
      changes = List.copyOf(changes);
    }
  }

  /**
   * There is more that can fail.
   *
   * @param results what comes of it, at least one
   */
  record MoreToFail(List<FailureResult> results) implements Cost {
    public MoreToFail {
      results = List.copyOf(results);
    }
  }

  /**
   * Water stands elsewhere in normal operation.
   *
   * @param before level today (elevation, m)
   * @param now level with the change (elevation, m)
   */
  record RunsElsewhere(String vessel, double before, double now) implements Cost {}

  /**
   * A run carries another flow in normal operation.
   *
   * @param run that a pump drives, or that was changed itself
   * @param before flow today (m³/s)
   * @param now flow with the change (m³/s)
   */
  record FlowsOtherwise(String run, double before, double now) implements Cost {}

  /**
   * A vessel loses more of its water after some failure.
   *
   * @param failure after which it is left with least, with the change
   * @param before what it is left with after that today (m³)
   * @param now what it is left with (m³)
   */
  record LosesMore(String vessel, Failure failure, double before, double now) implements Cost {}

  /** A pump sucks air after a failure after which it does not today. */
  record SucksAir(String pump, Failure failure) implements Cost {}
}
