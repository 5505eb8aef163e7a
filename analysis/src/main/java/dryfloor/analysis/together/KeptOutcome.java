package dryfloor.analysis.together;

import dryfloor.analysis.outcome.Ending;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.Verdict;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What is kept of the outcome of some failures at once: there are thousands of pairs and sets.
 *
 * @param reachedFloors water that reached floors from elsewhere (m³)
 * @param floors ids of the floors that got water, wettest first
 * @param firstWetFloor when the first of them did (s)
 * @param ending how it came to an end
 * @param margin the least freeboard left
 */
public record KeptOutcome(
    Verdict verdict,
    double reachedFloors,
    List<String> floors,
    OptionalDouble firstWetFloor,
    Ending ending,
    Outcome.Margin margin) {

  public KeptOutcome {
    floors = List.copyOf(floors);
  }

  static KeptOutcome of(Outcome outcome) {
    return new KeptOutcome(
        outcome.verdict(),
        outcome.reachedFloors(),
        outcome.floors().stream()
            .filter(floor -> floor.firstWet().isPresent())
            .sorted((a, b) -> Double.compare(b.received(), a.received()))
            .map(Outcome.FloorOutcome::id)
            .toList(),
        outcome.firstWetFloor(),
        outcome.ending(),
        outcome.margin());
  }
}
