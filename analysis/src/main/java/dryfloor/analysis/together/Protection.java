package dryfloor.analysis.together;

import dryfloor.analysis.failure.Failure;
import java.util.List;

/**
 * Something whose failure nobody notices, and what it alone stands between: these events wet a
 * floor if it has failed, and do not if it works.
 *
 * @param failure of the protection
 * @param events which it alone keeps from wetting a floor, worst first
 */
public record Protection(Failure failure, List<PairAnswer.Together> events) {

  public Protection {
    events = List.copyOf(events);
  }
}
