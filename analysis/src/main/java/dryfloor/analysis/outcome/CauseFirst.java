package dryfloor.analysis.outcome;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Puts what happens at one moment in the order in which it is understood: a basin or floor gets its
 * first water after what brings it there. The simulation finds both at the same instant, in
 * whichever order it looks.
 */
final class CauseFirst {

  private static final Set<StoryEvent.What> FIRST_WATER =
      EnumSet.of(StoryEvent.What.CATCHES, StoryEvent.What.FLOOR_WET);

  /** Whose other component is where water goes. */
  private static final Set<StoryEvent.What> BRINGS_TO_OTHER =
      EnumSet.of(
          StoryEvent.What.RUNS_BACKWARDS,
          StoryEvent.What.RUN_EMPTIES,
          StoryEvent.What.RUNS_OUT,
          StoryEvent.What.BEGINS_TO_FLOW,
          StoryEvent.What.SPILLS,
          StoryEvent.What.LEAKS,
          StoryEvent.What.BURSTS,
          StoryEvent.What.SILL_REACHED);

  private CauseFirst() {}

  /** The same events; those of different times stay in their order. */
  static List<StoryEvent> of(List<StoryEvent> story) {
    List<StoryEvent> ordered = new ArrayList<>();
    for (int from = 0; from < story.size(); ) {
      int to = from + 1;
      while (to < story.size() && story.get(to).time() == story.get(from).time()) {
        to++;
      }
      ordered.addAll(ofOneMoment(story.subList(from, to)));
      from = to;
    }
    return ordered;
  }

  private static List<StoryEvent> ofOneMoment(List<StoryEvent> moment) {
    List<StoryEvent> ordered = new ArrayList<>(moment);
    for (StoryEvent event : moment) {
      if (FIRST_WATER.contains(event.what())) {
        int at = ordered.indexOf(event);
        int cause = lastThatBrings(ordered, event.subject());
        if (cause > at) {
          ordered.add(cause + 1, event);
          ordered.remove(at);
        }
      }
    }
    return ordered;
  }

  private static int lastThatBrings(List<StoryEvent> events, String place) {
    for (int i = events.size() - 1; i >= 0; i--) {
      StoryEvent event = events.get(i);
      if (BRINGS_TO_OTHER.contains(event.what()) && event.other().equals(place)) {
        return i;
      }
    }
    return -1;
  }
}
