package dryfloor.analysis.simulation;

import dryfloor.analysis.outcome.StoryEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Takes down what happens, as it happens. */
final class Story {

  private final List<StoryEvent> events = new ArrayList<>();

  void tell(double time, StoryEvent.What what, String subject, String other) {
    events.add(new StoryEvent(time, what, subject, other, OptionalDouble.empty()));
  }

  void tell(double time, StoryEvent.What what, String subject, String other, double volume) {
    events.add(new StoryEvent(time, what, subject, other, OptionalDouble.of(volume)));
  }

  List<StoryEvent> events() {
    return events;
  }
}
