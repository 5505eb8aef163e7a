package dryfloor.app.report;

import dryfloor.analysis.outcome.StoryEvent;
import java.util.Optional;

/** What a picture says of a part after an event. */
final class PartState {

  private PartState() {}

  /** To follow on the part's name; nothing where the event does not change how the part stands. */
  static Optional<String> after(StoryEvent event) {
    return switch (event.what()) {
      case STOPS -> Optional.of("stopped");
      case STARTS -> Optional.of("runs");
      case SUCKS_AIR, LOSES_PRIME -> Optional.of("sucks air");
      case SIPHON_BREAKS -> Optional.of("lets air in");
      case OPENS -> Optional.of("open");
      case CLOSES -> Optional.of("shut");
      case POWER_LOST,
          POWER_BACK,
          ACTS,
          LETS_GO,
          RUNS_BACKWARDS,
          TAKES_AIR_AT_OPENING,
          COLUMN_PARTS,
          RUN_EMPTIES,
          RUN_PRIMES,
          RUNS_OUT,
          BEGINS_TO_FLOW,
          SPILLS,
          FLOODED,
          STOPS_SPILLING,
          LEAKS,
          BURSTS,
          CATCHES,
          FLOOR_WET,
          SILL_REACHED,
          EMPTY,
          POURED,
          TAKEN,
          TAKEN_IN_PART,
          FAILS,
          PUT_RIGHT ->
          Optional.empty();
    };
  }
}
