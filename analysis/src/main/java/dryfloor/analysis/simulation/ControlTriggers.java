package dryfloor.analysis.simulation;

import dryfloor.analysis.network.ControlUnit;
import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.outcome.StoryEvent.What;
import dryfloor.model.element.Control;
import java.util.List;

/** When switches, sensors and timers act. */
final class ControlTriggers {

  private final FlowNetwork network;
  private final State state;
  private final FlowField field;
  private final Story story;
  private final Agenda agenda;

  ControlTriggers(FlowNetwork network, State state, FlowField field, Story story, Agenda agenda) {
    this.network = network;
    this.state = state;
    this.field = field;
    this.story = story;
    this.agenda = agenda;
  }

  void addTo(List<Trigger> triggers) {
    for (int i = 0; i < network.controls().size(); i++) {
      ControlUnit unit = network.controls().get(i);
      switch (unit.control()) {
        case Control.LevelSwitch levelSwitch -> addSwitch(i, unit, levelSwitch, triggers);
        case Control.LeakSensor sensor -> addSensor(i, unit, sensor, triggers);
        case Control.Timer timer -> {}
        case Control.HandSwitch handSwitch -> {}
      }
    }
  }

  private void addSwitch(
      int i, ControlUnit unit, Control.LevelSwitch levelSwitch, List<Trigger> triggers) {
    boolean acted = state.board.hasActed(i);
    if (acted && levelSwitch.action().locksOut()) {
      return;
    }
    boolean actsWhenLow = actsWhenLow(levelSwitch.action());
    triggers.add(
        new Trigger(
            levelSwitch.id() + " acts",
            () -> {
              double level = felt(unit);
              double above = level - levelSwitch.lower();
              double below = levelSwitch.upper() - level;
              return acted == actsWhenLow ? below : above;
            },
            () -> {
              state.board.setActed(i, !acted);
              story.tell(
                  state.time,
                  acted ? What.LETS_GO : What.ACTS,
                  levelSwitch.id(),
                  levelSwitch.vessel());
            }));
  }

  /** Whether a switch acts at its lower level and lets go at its upper one. */
  static boolean actsWhenLow(Control.LevelSwitch.Action action) {
    return switch (action) {
      case FILLS, STOPS_WHEN_LOW, LOCKS_OUT_WHEN_LOW -> true;
      case EMPTIES, STOPS_WHEN_HIGH, LOCKS_OUT_WHEN_HIGH -> false;
    };
  }

  private double felt(ControlUnit unit) {
    return switch (unit.fault()) {
      case FEELS_LOW -> Double.NEGATIVE_INFINITY;
      case FEELS_HIGH -> Double.POSITIVE_INFINITY;
      case NONE, DEAD, TRIPPED -> field.levels[unit.place()];
    };
  }

  private void addSensor(
      int i, ControlUnit unit, Control.LeakSensor sensor, List<Trigger> triggers) {
    if (state.board.hasActed(i) || agenda.awaits(i) || unit.fault() == ControlUnit.Fault.DEAD) {
      return;
    }
    double bottom = network.places().get(unit.place()).table().bottom();
    triggers.add(
        new Trigger(
            sensor.id() + " feels water",
            () ->
                unit.fault() == ControlUnit.Fault.TRIPPED
                    ? -1
                    : bottom + sensor.depth() - field.levels[unit.place()],
            () -> agenda.after(sensor.delay(), i, () -> act(i, sensor.in()))));
  }

  private void act(int i, String feels) {
    state.board.setActed(i, true);
    story.tell(state.time, What.ACTS, network.controls().get(i).control().id(), feels);
  }

  /** Goes on waiting for what controls waited for, unless they are dead by now. */
  void goOnWaiting(List<Agenda.Waiting> waiting) {
    for (Agenda.Waiting entry : waiting) {
      ControlUnit unit = network.controls().get(entry.owner());
      if (unit.fault() != ControlUnit.Fault.DEAD) {
        String feels = unit.control() instanceof Control.LeakSensor sensor ? sensor.in() : "";
        agenda.at(entry.time(), entry.owner(), () -> act(entry.owner(), feels));
      }
    }
  }

  /** Starts and stops the clocks of timers after parts have changed. */
  void runTimers() {
    for (int i = 0; i < network.controls().size(); i++) {
      ControlUnit unit = network.controls().get(i);
      if (unit.control() instanceof Control.Timer timer) {
        runTimer(i, unit, timer);
      }
    }
  }

  private void runTimer(int i, ControlUnit unit, Control.Timer timer) {
    boolean called =
        unit.parts().stream()
            .anyMatch(part -> state.board.hasPower(part) && state.board.isCalled(part));
    if (!called) {
      agenda.drop(i);
      state.board.setActed(i, false);
    } else if (!state.board.hasActed(i)
        && !agenda.awaits(i)
        && unit.fault() != ControlUnit.Fault.DEAD) {
      double wait = unit.fault() == ControlUnit.Fault.TRIPPED ? 0 : timer.longestRun();
      agenda.after(wait, i, () -> act(i, ""));
    }
  }
}
