package dryfloor.analysis.worksheet;

import dryfloor.analysis.sweep.FailureResult;
import java.util.List;
import java.util.Optional;

/**
 * One failure mode of one item.
 *
 * @param result the failure and what it leads to
 * @param item id of the component that fails; none for the whole building and for people
 * @param severity of the effect; none where there is no answer, which never counts as harmless
 * @param hidden whether it shows nothing until something else fails
 * @param acted ids of what acted against it in the computed course: sensors, switches, siphon
 *     breaks, basins, drains
 */
public record WorksheetLine(
    FailureResult result,
    Optional<String> item,
    Optional<Severity> severity,
    boolean hidden,
    List<String> acted) {

  public WorksheetLine {
    acted = List.copyOf(acted);
  }
}
