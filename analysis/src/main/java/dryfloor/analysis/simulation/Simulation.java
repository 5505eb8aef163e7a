package dryfloor.analysis.simulation;

import dryfloor.analysis.failure.Effect;
import dryfloor.analysis.network.Account;
import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.network.Place;
import dryfloor.analysis.network.PoweredPart;
import dryfloor.analysis.outcome.Ledger;
import dryfloor.analysis.outcome.Note;
import dryfloor.analysis.outcome.StoryEvent.What;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * One installation, with its failures built in, from time zero to its end.
 *
 * <p>The loop is in {@link #run}: settle the modes, take a step, see whether something happened in
 * it, take it down, see whether this is the end.
 */
public final class Simulation {

  /** Something that happened is found in time to this (s). */
  private static final double MOMENT = 5e-4;

  /** A level that lies farther than this from where it was to be expected has strayed (m). */
  private static final double STRAYED = 1e-5;

  private static final int MOST_AGAIN = 4;
  private static final int MOST_STEPS = 60_000;
  private static final int MOST_ACTIONS_AT_ONCE = 400;
  private static final int TOLD_OF_A_LOOP = 6;
  private static final int MOST_FALSE_ALARMS = 20;
  private static final double SMALLEST_STEP = 1e-9;
  private static final double FIRST_STEP = 0.05;

  private final FlowNetwork network;
  private final State state;
  private final FlowField field;
  private final Story story = new Story();
  private final Agenda agenda;
  private final PipeTriggers pipeTriggers;
  private final TeeTriggers teeTriggers;
  private final CrestTriggers crestTriggers;
  private final ControlTriggers controlTriggers;
  private final Watch watch;
  private final VolumeStep step;
  private final Salt salt;
  private final Recorder recorder;
  private final EndWatch end;
  private final BooleanSupplier cancelled;

  /**
   * How often in a row a step was cut short for something that then did not happen: the shorter
   * step tells otherwise than the longer one. Each time the next one is cut less short.
   */
  private int falseAlarms;

  private List<Trigger> triggers = List.of();
  private Slopes slopes = new Slopes();
  private Slopes slopesAtEnd = new Slopes();
  private final double[] between;

  private Simulation(
      FlowNetwork network,
      State state,
      double usualInflow,
      Accuracy accuracy,
      BooleanSupplier cancelled) {
    this.network = network;
    this.state = state;
    this.cancelled = cancelled;
    field = new FlowField(network, state);
    agenda = new Agenda(state);
    pipeTriggers = new PipeTriggers(network, state, field, story);
    teeTriggers = new TeeTriggers(network, state, field);
    crestTriggers = new CrestTriggers(network, field);
    controlTriggers = new ControlTriggers(network, state, field, story, agenda);
    watch = new Watch(network, state, field, story);
    step = new VolumeStep(network, field, accuracy);
    salt = new Salt(network, state.salt);
    recorder = new Recorder(network, story);
    end = new EndWatch(network, state, field, recorder, agenda, salt, usualInflow);
    int places = network.places().size();
    between = new double[places];
  }

  /**
   * Normal operation, from the declared levels to where they settle.
   *
   * @throws NoAnswer if it comes to no answer
   */
  public static Course ofNormalOperation(
      FlowNetwork network, Accuracy accuracy, BooleanSupplier cancelled) {
    return new Simulation(network, Beginning.asDeclared(network), 0, accuracy, cancelled).run();
  }

  /**
   * A failure, from where normal operation settled.
   *
   * @param normal what happened in normal operation
   * @param failed the same installation with the failure built in
   * @throws NoAnswer if it comes to no answer
   */
  public static Course ofFailure(
      Course normal, FlowNetwork failed, Accuracy accuracy, BooleanSupplier cancelled) {
    State state = Beginning.after(normal.network(), normal.state(), failed);
    return new Simulation(failed, state, normal.inflow, accuracy, cancelled).run();
  }

  private Course run() {
    double[] volumesBefore = state.volumes.clone();
    double[] saltBefore = state.salt.clone();
    enterEffects();
    field.rewire();
    field.evaluate(state.volumes);
    recorder.begin(state.time, field.levels, field.flows);
    settle();
    double proposed = FIRST_STEP;
    for (int taken = 0; !end.reached() || movesOn(); taken++) {
      if (taken > MOST_STEPS) {
        throw new NoAnswer("it went on without settling; " + where());
      }
      if (cancelled.getAsBoolean()) {
        throw new NoAnswer("it was cancelled");
      }
      double most = Math.min(agenda.next(), network.away()) - state.time;
      if (most > 0) {
        proposed = advance(Math.min(proposed, most));
      }
      if (agenda.doDue() || anyDue()) {
        settle();
        end.modesChanged();
        proposed = Math.min(proposed, FIRST_STEP);
      }
    }
    recorder.tellWhatRanOut(field.flows);
    List<Note> notes = new ArrayList<>();
    watch.atVapourPressure().forEach(run -> notes.add(new Note.CrestAtVapourPressure(run)));
    for (int i = 0; i < state.pipes.length; i++) {
      if (state.pipes[i].staysOpen()) {
        notes.add(new Note.FlushesOnAndOn(network.pipes().get(i).run()));
      }
    }
    return new Course(
        network,
        state,
        volumesBefore,
        saltBefore,
        recorder,
        salt,
        story.events(),
        end.ending(),
        notes,
        end.inflow());
  }

  /** Whether columns that were left at rest have to go a last bit before this is the end. */
  private boolean movesOn() {
    boolean any = end.isStill() && pipeTriggers.wakeColumns();
    if (any) {
      settle();
    }
    return any;
  }

  /** Takes one step of at most this length; returns the length to try next. */
  private double advance(double longest) {
    double h = longest;
    double error = tryStep(h);
    while (error > 1) {
      h *= Math.max(0.1, 0.8 * Math.pow(error, -1.0 / 3));
      if (h < SMALLEST_STEP) {
        throw new NoAnswer("no step was small enough; " + where());
      }
      error = tryStep(h);
    }
    double next = h * Math.min(6, 0.85 * Math.pow(Math.max(error, 1e-9), -1.0 / 3));
    if (anyDue() && h > MOMENT) {
      h = closeIn(h);
      for (int again = 0; again < MOST_AGAIN && strayed() && anyDue() && h > MOMENT; again++) {
        h = closeIn(h);
      }
      falseAlarms = anyDue() ? 0 : Math.min(falseAlarms + 1, MOST_FALSE_ALARMS);
    } else {
      falseAlarms = 0;
    }
    accept(h);
    return Math.max(next, SMALLEST_STEP * 10);
  }

  /** Takes the step again up to where something became due; returns its new length. */
  private double closeIn(double longer) {
    double h =
        Math.clamp(
            longer * shareUntilDue(longer), Math.min(longer, MOMENT * (1L << falseAlarms)), longer);
    while (tryStep(h) > 1 && h > SMALLEST_STEP) {
      h /= 2;
    }
    return h;
  }

  /**
   * Whether the step led elsewhere than the longer one let expect, by more than a tenth of what is
   * promised for a level: a level that slides at a pump's inlet says little about the flow.
   */
  private boolean strayed() {
    for (int place = 0; place < between.length; place++) {
      boolean vessel =
          switch (network.places().get(place).kind()) {
            case VESSEL, BASIN, FLOOR -> true;
            case COLUMN, TEE, DEVICE, SUPPLY, DRAIN, BEYOND, OUTSIDE -> false;
          };
      double off = Math.abs(step.volumes[place] - between[place]);
      if (vessel && off > STRAYED * field.areas[place]) {
        return true;
      }
    }
    return false;
  }

  private double tryStep(double h) {
    return step.take(state.volumes, slopes, h, slopesAtEnd);
  }

  private boolean anyDue() {
    for (Trigger trigger : triggers) {
      if (trigger.isDue()) {
        return true;
      }
    }
    return false;
  }

  /** Share of the step after which the first of the triggers that are due became so. */
  private double shareUntilDue(double h) {
    List<Trigger> due = triggers.stream().filter(Trigger::isDue).toList();
    Crossing within = within(h);
    double atEnd = least(due);
    field.evaluate(state.volumes);
    double atStart = least(due);
    double found =
        Crossing.find(
            share -> {
              within.volumes(share, between);
              field.evaluate(between);
              return least(due);
            },
            Math.max(atStart, 1e-300),
            atEnd,
            Math.min(1, MOMENT / h));
    within.volumes(found, between);
    return found;
  }

  private static double least(List<Trigger> due) {
    double least = Double.POSITIVE_INFINITY;
    for (Trigger trigger : due) {
      least = Math.min(least, trigger.gauge().getAsDouble());
    }
    return least;
  }

  private Crossing within(double h) {
    return new Crossing(
        state.volumes.clone(), step.gains.clone(), step.volumes.clone(), field.gains.clone(), h);
  }

  private void accept(double h) {
    salt.carry(state.volumes, step.moved);
    recorder.take(state.time, h, step.moved, within(h), field.levels);
    System.arraycopy(step.volumes, 0, state.volumes, 0, state.volumes.length);
    state.time += h;
    Slopes swapped = slopes;
    slopes = slopesAtEnd;
    slopesAtEnd = swapped;
    step.start();
    watch.look();
  }

  /** Does what is due at this moment until nothing more is. */
  private void settle() {
    Deque<String> last = new ArrayDeque<>();
    for (int action = 0; action < MOST_ACTIONS_AT_ONCE; action++) {
      agenda.doDue();
      controlTriggers.runTimers();
      watch.parts(state.board.update());
      field.rewire();
      field.evaluate(state.volumes, slopes);
      triggers = new ArrayList<>();
      controlTriggers.addTo(triggers);
      pipeTriggers.addTo(triggers);
      teeTriggers.addTo(triggers);
      crestTriggers.addTo(triggers);
      watch.addTo(triggers);
      Optional<Trigger> due = triggers.stream().filter(Trigger::isDue).findFirst();
      if (due.isEmpty() && agenda.next() > state.time) {
        step.start();
        return;
      }
      due.ifPresent(
          trigger -> {
            trigger.action().run();
            last.addLast(trigger.what());
          });
      if (last.size() > TOLD_OF_A_LOOP) {
        last.removeFirst();
      }
    }
    throw new NoAnswer(
        "its parts switch to and fro without end (" + String.join(", ", last) + "); " + where());
  }

  private String where() {
    int fastest = 0;
    for (int place = 0; place < field.gains.length; place++) {
      if (network.places().get(place).kind().isPool() && speed(place) > speed(fastest)) {
        fastest = place;
      }
    }
    return String.format(
        Locale.ROOT,
        "at %.3f s, with most going on in '%s'",
        state.time,
        network.places().get(fastest).id());
  }

  private double speed(int place) {
    return Math.abs(field.gains[place]) / field.areas[place];
  }

  // What the failure changes with time.

  private void enterEffects() {
    for (Effect effect : network.effects()) {
      switch (effect) {
        case Effect.CircuitOff off -> agenda.at(off.time(), () -> cut(off.circuit()));
        case Effect.CircuitOn on -> agenda.at(on.time(), () -> restore(on.circuit()));
        case Effect.Poured poured -> agenda.at(poured.time(), () -> pour(poured));
        case Effect.PumpCannotRun built -> {}
        case Effect.IgnoresControls built -> {}
        case Effect.PumpWeakened built -> {}
        case Effect.ValveHeld built -> {}
        case Effect.ValveFrozen built -> {}
        case Effect.CheckValveHeldOpen built -> {}
        case Effect.CheckValveLeaks built -> {}
        case Effect.CheckValveHeldShut built -> {}
        case Effect.SiphonBreakHeldShut built -> {}
        case Effect.RunNarrowed built -> {}
        case Effect.WeirNarrowed built -> {}
        case Effect.RunParted built -> {}
        case Effect.RunLeaks built -> {}
        case Effect.EndMoved built -> {}
        case Effect.VesselLeaks built -> {}
        case Effect.VesselLost built -> {}
        case Effect.Thrown built -> {}
        case Effect.DrainTakesNothing built -> {}
        case Effect.SupplyPressureTimes built -> {}
        case Effect.SwitchHeld built -> {}
        case Effect.SwitchBand built -> {}
        case Effect.ControlDead built -> {}
        case Effect.ControlTripped built -> {}
        case Effect.HandSwitchSet built -> {}
        case Effect.AwayTimes built -> {}
      }
    }
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
        int waiting = part;
        agenda.after(what.power().delay(), Agenda.NOBODY, () -> state.board.delayIsOver(waiting));
      }
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
