package dryfloor.analysis.simulation;

import dryfloor.analysis.failure.Effect;
import dryfloor.analysis.network.Account;
import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.network.LevelTable;
import dryfloor.analysis.network.PoweredPart;
import dryfloor.analysis.outcome.Ledger;
import dryfloor.analysis.outcome.StoryEvent.What;

/**
 * What a failure changes with time: power that goes and comes back, water poured in or taken out.
 */
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
        case Effect.Taken taken -> at(taken.time(), until, () -> take(taken));
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
    double salty = poured.volume() * poured.salinity();
    carry(Ledger.Way.POURED, poured.vessel(), poured.volume(), salty);
    story.tell(state.time, What.POURED, poured.vessel(), "", poured.volume());
  }

  /** As much as stands above what can be reached; it takes its share of the vessel's salt along. */
  private void take(Effect.Taken taken) {
    salt.finish();
    Account account = network.accounts().get(account(Ledger.Way.TAKEN, taken.vessel()));
    LevelTable table = network.places().get(account.from()).table();
    double held = state.volumes[account.from()];
    double outOfReach = Math.max(table.volume(table.bottom() + taken.downTo()), 0);
    double volume = Math.clamp(held - outOfReach, 0, taken.volume());
    double salty = volume > 0 ? state.salt[account.from()] * volume / held : 0;
    carry(Ledger.Way.TAKEN, taken.vessel(), volume, salty);
    boolean all = volume >= taken.volume();
    story.tell(state.time, all ? What.TAKEN : What.TAKEN_IN_PART, taken.vessel(), "", volume);
  }

  /** Moves water (m³) and salt (g/kg · m³) at once over the account of a vessel. */
  private void carry(Ledger.Way way, String vessel, double volume, double salty) {
    int a = account(way, vessel);
    Account account = network.accounts().get(a);
    state.volumes[account.from()] -= volume;
    state.volumes[account.to()] += volume;
    state.salt[account.from()] -= salty;
    state.salt[account.to()] += salty;
    recorder.carried[0][a] += volume;
    salt.carried[0][a] += salty;
  }

  private int account(Ledger.Way way, String vessel) {
    for (int a = 0; a < network.accounts().size(); a++) {
      Account account = network.accounts().get(a);
      if (account.way() == way && account.path().equals(vessel)) {
        return a;
      }
    }
    throw new IllegalStateException("water of '" + vessel + "' goes by no account");
  }
}
