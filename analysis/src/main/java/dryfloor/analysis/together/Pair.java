package dryfloor.analysis.together;

import dryfloor.analysis.failure.Failure;
import java.util.List;

/** Two failures at once, in the order of the list of failures. */
public record Pair(Failure first, Failure second) {

  /** Both. */
  public List<Failure> both() {
    return List.of(first, second);
  }

  /** Whether it is one of the two. */
  public boolean has(Failure failure) {
    return first.equals(failure) || second.equals(failure);
  }

  /** The one that is not this one. */
  public Failure otherThan(Failure failure) {
    return first.equals(failure) ? second : first;
  }
}
