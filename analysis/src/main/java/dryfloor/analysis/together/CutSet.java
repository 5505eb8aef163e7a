package dryfloor.analysis.together;

import dryfloor.analysis.failure.Failure;
import java.util.List;

/**
 * The smallest set of failures that wets a floor: if any one of them does not happen, the others
 * leave every floor dry.
 *
 * @param failures in the order of the list of failures
 * @param outcome of all of them at once
 */
public record CutSet(List<Failure> failures, KeptOutcome outcome) {

  public CutSet {
    failures = List.copyOf(failures);
  }
}
