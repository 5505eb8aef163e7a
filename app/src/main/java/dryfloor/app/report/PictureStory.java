package dryfloor.app.report;

import dryfloor.analysis.outcome.StoryEvent;

/** Which events of a long story are told beside a picture: those on which the outcome turns. */
final class PictureStory {

  private PictureStory() {}

  static boolean isTold(StoryEvent event) {
    return switch (event.what()) {
      case POWER_LOST,
          POWER_BACK,
          RUNS_BACKWARDS,
          SIPHON_BREAKS,
          COLUMN_PARTS,
          SUCKS_AIR,
          LOSES_PRIME,
          SPILLS,
          FLOODED,
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
          true;
      case STOPS,
          STARTS,
          OPENS,
          CLOSES,
          ACTS,
          LETS_GO,
          TAKES_AIR_AT_OPENING,
          RUN_EMPTIES,
          RUN_PRIMES,
          RUNS_OUT,
          BEGINS_TO_FLOW,
          STOPS_SPILLING ->
          false;
    };
  }
}
