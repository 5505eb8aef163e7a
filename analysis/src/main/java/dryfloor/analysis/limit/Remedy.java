package dryfloor.analysis.limit;

import dryfloor.analysis.failure.Failure;
import dryfloor.model.Installation;
import java.util.List;

/**
 * One change with which a failure that wets a floor today, or has no answer, wets none, and no
 * other does that does not today. Every failure of the changed drawing was run, those that come
 * with an added part among them.
 *
 * @param mended the drawing with the change
 * @param costs what is worse with it elsewhere; none where nothing is
 */
public record Remedy(Failure failure, SingleChange change, Installation mended, List<Cost> costs) {

  public Remedy {
    costs = List.copyOf(costs);
  }
}
