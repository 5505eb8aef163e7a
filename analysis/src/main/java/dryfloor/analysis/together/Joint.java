package dryfloor.analysis.together;

import dryfloor.analysis.failure.Failure;
import java.util.Optional;
import java.util.Set;

/**
 * What two failures do at once, as far as it matters to a third.
 *
 * @param influence what they change; none where nothing can be ruled out
 * @param idle failures that would change nothing more
 */
record Joint(Optional<Influences.Influence> influence, Set<Failure> idle) {

  Joint {
    idle = Set.copyOf(idle);
  }

  /** Whether a third failure beside these two certainly does what it does alone, or nothing. */
  boolean leavesOut(Alone third) {
    boolean meet =
        influence.isEmpty()
            || third.influence().isEmpty()
            || influence.get().meets(third.influence().get());
    return !meet || idle.contains(third.failure());
  }
}
