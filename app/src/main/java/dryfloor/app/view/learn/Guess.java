package dryfloor.app.view.learn;

import dryfloor.analysis.outcome.Verdict;
import java.util.Map;
import java.util.Optional;

/**
 * What a trainee expects.
 *
 * @param levels expected final level of each vessel asked for, by id (m, elevation)
 * @param verdict where the water goes
 * @param floor id of the floor that gets most of it; none where no floor gets wet
 */
public record Guess(Map<String, Double> levels, Verdict verdict, Optional<String> floor) {
  public Guess {
    levels = Map.copyOf(levels);
  }
}
