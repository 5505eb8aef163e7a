package dryfloor.analysis.limit;

import dryfloor.analysis.sweep.SweepResult;
import java.util.List;

/**
 * The limits of one installation.
 *
 * @param today every failure as drawn
 * @param answers one for each property that was asked about, in the order of the drawing
 */
public record LimitResult(SweepResult today, List<LimitAnswer> answers) {

  public LimitResult {
    answers = List.copyOf(answers);
  }
}
