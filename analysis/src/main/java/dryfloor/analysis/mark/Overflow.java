package dryfloor.analysis.mark;

import dryfloor.analysis.outcome.Ledger;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.Verdict;
import dryfloor.model.Installation;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Follows what runs over a vessel's rim, through basins that run over in turn, to the floors. */
final class Overflow {

  /** Less water than this (m³) is not told anywhere. */
  private static final double WORTH_TELLING = 1e-5;

  private final Installation installation;
  private final Outcome outcome;

  private Overflow(Installation installation, Outcome outcome) {
    this.installation = installation;
    this.outcome = outcome;
  }

  static VesselMarks.PowerLoss of(
      Installation installation, Outcome powerLoss, Outcome.VesselOutcome vessel) {
    Overflow overflow = new Overflow(installation, powerLoss);
    List<String> over = overflow.overTheRim(vessel.id());
    boolean wet = powerLoss.verdict() == Verdict.WET;
    if (over.isEmpty()) {
      return wet ? VesselMarks.PowerLoss.KEEPS_WHILE_A_FLOOR_GETS_WET : VesselMarks.PowerLoss.KEEPS;
    }
    return overflow.reachesAFloor(over)
        ? VesselMarks.PowerLoss.WETS_A_FLOOR
        : VesselMarks.PowerLoss.RUNS_OVER;
  }

  private List<String> overTheRim(String vessel) {
    return outcome.ledger().entries().stream()
        .filter(entry -> entry.from().equals(vessel) && entry.way() == Ledger.Way.RIM)
        .filter(entry -> entry.volume() > WORTH_TELLING)
        .map(Ledger.Entry::to)
        .toList();
  }

  private boolean reachesAFloor(List<String> places) {
    Set<String> reached = new HashSet<>(places);
    Deque<String> open = new ArrayDeque<>(places);
    while (!open.isEmpty()) {
      String place = open.removeFirst();
      if (isFloor(place)) {
        return true;
      }
      overTheRim(place).stream()
          .filter(next -> isBasin(place) && reached.add(next))
          .forEach(open::addLast);
    }
    return false;
  }

  private boolean isFloor(String id) {
    return id.equals(Ledger.BEYOND)
        || installation.floors().stream().anyMatch(floor -> floor.id().equals(id));
  }

  private boolean isBasin(String id) {
    return installation.vessels().stream()
        .anyMatch(vessel -> vessel.id().equals(id) && vessel.isBasin());
  }
}
