package dryfloor.analysis.simulation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a pipe is made of in its present mode.
 *
 * @param through the whole pipe, when it is full
 * @param legs the branch of each leg that takes part
 */
record PipeBranches(Optional<PipeBranch> through, List<Optional<PipeBranch>> legs) {

  List<Branch> all() {
    List<Branch> all = new ArrayList<>();
    through.ifPresent(all::add);
    legs.forEach(leg -> leg.ifPresent(all::add));
    return all;
  }
}
