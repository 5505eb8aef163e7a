package dryfloor.analysis.simulation;

import dryfloor.analysis.failure.Effect;
import dryfloor.analysis.network.Account;
import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.network.Place;
import dryfloor.analysis.network.PoweredPart;
import dryfloor.analysis.outcome.Ledger;
import dryfloor.analysis.outcome.StoryEvent.What;

/** What a failure changes with time: power that goes and comes back, water that is poured in. */
final class TimedEffects {

  private final FlowNetwork network;
  private final State state;
  private final Agenda agenda;
  private final Story story;
  private final Salt salt;
  private final Recorder recorder;

  TimedEffects(
      FlowNetwork network, State state, Agenda agenda, Story story, Salt salt, Recorder recorder) {
    this.network = network;
    this.state = state;
    this.agenda = agenda;
    this.story = story;
    this.salt = salt;
    this.recorder = recorder;
  }

  /** Enters what is due from now on but before a time (s). */
  void enter(double until) {
    for (Effect effect : network.effects()) {
      switch (effect) {
        case Effect.CircuitOff off -> at(off.time(), until, () -> cut(off.circuit()));
        case Effect.CircuitOn on -> at(on.time(), until, () -> restore(on.circuit()));
        case Effect.Poured poured -> at(poured.time(), until, () -> pour(poured));
        case Effect.News news -> at(news.time(), until, () -> tell(news));
        case Effect.Built built -> {}
        case Effect.During staged -> {}
        case Effect.AwayTimes away -> {}
        case Effect.AwayFrom away -> {}
      }
    }
  }

  private void at(double time, double until, Runnable action) {
    if (time >= state.time && time < until) {
      agenda.at(time, action);
    }
  }

  private void tell(Effect.News news) {
    story.tell(state.time, news.over() ? What.PUT_RIGHT : What.FAILS, news.failure(), "");
  }

  private void cut(String circuit) {
    state.board.cut(circuit);
    story.tell(state.time, What.POWER_LOST, circuit, "");
  }

  private void restore(String circuit) {
    state.board.restore(circuit);
    story.tell(state.time, What.POWER_BACK, circuit, "");
    for (int part = 0; part < network.parts().size(); part++) {
      PoweredPart what = network.parts().get(part);
      if (what.power().circuit().equals(circuit) && what.power().delay() > 0) {
        state.board.waitUntil(part, state.time + what.power().delay());
        waitForDelay(part);
      }
    }
  }

  private void waitForDelay(int part) {
    double over = state.board.waitsUntil(part);
    if (over < Double.POSITIVE_INFINITY) {
      agenda.at(over, () -> state.board.delayIsOver(part, state.time));
    }
  }

  /** Goes on waiting for delays that had begun before other things were built in. */
  void goOnWaiting() {
    for (int part = 0; part < network.parts().size(); part++) {
      waitForDelay(part);
    }
  }

  private void pour(Effect.Poured poured) {
    salt.finish();
    for (int place = 0; place < state.volumes.length; place++) {
      Place what = network.places().get(place);
      if (what.id().equals(poured.vessel())
          && what.kind().isPool()
          && what.kind() != Place.Kind.COLUMN) {
        state.volumes[place] += poured.volume();
      } else if (what.kind() == Place.Kind.OUTSIDE) {
        state.volumes[place] -= poured.volume();
      }
    }
    for (int a = 0; a < network.accounts().size(); a++) {
      Account account = network.accounts().get(a);
      if (account.way() == Ledger.Way.POURED && account.path().equals(poured.vessel())) {
        recorder.carried[0][a] += poured.volume();
      }
    }
    story.tell(state.time, What.POURED, poured.vessel(), "", poured.volume());
  }
}
