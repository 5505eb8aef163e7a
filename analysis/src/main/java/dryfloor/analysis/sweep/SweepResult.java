package dryfloor.analysis.sweep;

import dryfloor.analysis.outcome.Outcome;
import dryfloor.model.Installation;
import java.util.List;

/**
 * All the answers for one installation.
 *
 * @param installation that was asked about
 * @param normal normal operation, from the declared levels to the steady state
 * @param results one for each failure, power first, then in the order of the drawing
 */
public record SweepResult(Installation installation, Outcome normal, List<FailureResult> results) {

  public SweepResult {
    results = List.copyOf(results);
  }

  /** The results, worst first. */
  public List<FailureResult> worstFirst() {
    return results.stream().sorted(WorstFirst.ORDER).toList();
  }
}
