package dryfloor.analysis.absence;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.StoryEvent;
import dryfloor.model.Installation;
import dryfloor.model.element.Control;
import java.util.List;
import java.util.Optional;

/**
 * What stops something by itself while nobody is there: leak sensors, stops for high and for low
 * water, and limits of running time. What calls for water or for emptying is no guard.
 */
final class Guards {

  private final Installation installation;

  Guards(Installation installation) {
    this.installation = installation;
  }

  /** Ids of the guards that acted, in the order of the drawing. */
  List<String> acted(Outcome outcome) {
    return installation.controls().stream()
        .filter(control -> death(control).isPresent())
        .map(Control::id)
        .filter(
            id ->
                outcome.story().stream()
                    .anyMatch(
                        event ->
                            event.what() == StoryEvent.What.ACTS && event.subject().equals(id)))
        .toList();
  }

  /** All guards dead, each as a failure of its own. */
  List<Failure> allDead() {
    return installation.controls().stream().flatMap(control -> death(control).stream()).toList();
  }

  private static Optional<Failure> death(Control control) {
    return switch (control) {
      case Control.LeakSensor sensor -> Optional.of(new Failure.LeakSensorDoesNotAct(sensor.id()));
      case Control.Timer timer -> Optional.of(new Failure.TimerDoesNotAct(timer.id()));
      case Control.LevelSwitch level ->
          switch (level.action()) {
            case STOPS_WHEN_HIGH, LOCKS_OUT_WHEN_HIGH ->
                Optional.of(new Failure.LevelSwitchStuckLow(level.id()));
            case STOPS_WHEN_LOW, LOCKS_OUT_WHEN_LOW ->
                Optional.of(new Failure.LevelSwitchStuckHigh(level.id()));
            case FILLS, EMPTIES -> Optional.empty();
          };
      case Control.HandSwitch hand -> Optional.empty();
    };
  }
}
