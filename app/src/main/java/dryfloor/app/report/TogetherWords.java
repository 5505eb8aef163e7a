package dryfloor.app.report;

import dryfloor.analysis.together.KeptOutcome;
import java.util.List;

/** What failures together do, for a cell of a table. */
record TogetherWords(Wording wording) {

  /** How much water is where. */
  String water(KeptOutcome outcome) {
    List<String> floors =
        outcome.floors().stream().map(floor -> wording.names().small(floor)).toList();
    String where = floors.isEmpty() ? "beyond the drawing" : Sentences.enumerate(floors);
    return wording.amounts().volume(outcome.reachedFloors())
        + " on "
        + where
        + Whereabouts.goesOn(wording, outcome.ending());
  }

  /** When a floor first gets wet. */
  String when(KeptOutcome outcome) {
    return outcome.firstWetFloor().stream()
        .mapToObj(time -> time < VerdictSentence.AT_ONCE ? "at once" : wording.amounts().time(time))
        .findFirst()
        .orElse("");
  }
}
