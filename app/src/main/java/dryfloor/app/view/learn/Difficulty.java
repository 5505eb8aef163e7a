package dryfloor.app.view.learn;

import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.StoryEvent;
import dryfloor.analysis.outcome.StoryEvent.What;
import java.util.Set;

/**
 * How hard a failure is to foresee, from what happens in its story: each different kind of event,
 * each place that ends up with another level, and twice each event that nobody sees coming. A made
 * scale that only puts exercises in order.
 *
 * @param points from 0, which is nothing happening at all
 */
public record Difficulty(int points) implements Comparable<Difficulty> {

  /** A level that has moved less looks as before (m). */
  private static final double LOOKS_THE_SAME = 1e-3;

  private static final Set<What> UNFORESEEN =
      Set.of(
          What.RUNS_BACKWARDS,
          What.TAKES_AIR_AT_OPENING,
          What.SIPHON_BREAKS,
          What.COLUMN_PARTS,
          What.RUN_PRIMES,
          What.SUCKS_AIR,
          What.LOSES_PRIME,
          What.FLOODED,
          What.SILL_REACHED);

  static Difficulty of(Outcome outcome) {
    long kinds = outcome.story().stream().map(StoryEvent::what).distinct().count();
    long unforeseen =
        outcome.story().stream()
            .map(StoryEvent::what)
            .distinct()
            .filter(UNFORESEEN::contains)
            .count();
    long moved =
        outcome.vessels().stream()
            .filter(v -> Math.abs(v.levelAfter() - v.levelBefore()) > LOOKS_THE_SAME)
            .count();
    long wet = outcome.floors().stream().filter(floor -> floor.received() > 0).count();
    return new Difficulty((int) (kinds + 2 * unforeseen + moved + wet));
  }

  @Override
  public int compareTo(Difficulty other) {
    return Integer.compare(points, other.points);
  }
}
