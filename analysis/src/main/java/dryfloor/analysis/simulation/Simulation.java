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
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;

/**
 * One installation, with its failures built in, from time zero to its end.
 *
 * <p>The loop is in {@link #run}: settle the modes, take a step, see whether something happened in
 * it, take it down, see whether this is the end.
 */
public final class Simulation {

  private static final int MOST_STEPS = 200_000;
  private static final int MOST_ACTIONS_AT_ONCE = 400;
  private static final int TOLD_OF_A_LOOP = 6;
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
  private final Stepper stepper;
  private final Salt salt;
  private final Recorder recorder;
  private final StillOnItsWay onItsWay;
  private final NeverRan neverRan;
  private final EndWatch end;
  private final Whereabouts whereabouts;
  private final BooleanSupplier cancelled;

  private List<Trigger> triggers = List.of();

  private Simulation(
      FlowNetwork network,
      State state,
      double usualInflow,
      Set<String> carriedBefore,
      Stepper.Maker with,
      BooleanSupplier cancelled) {
    this.network = network;
    this.state = state;
    this.cancelled = cancelled;
    field = new FlowField(network, state);
    agenda = new Agenda(state);
    pipeTriggers = new PipeTriggers(network, state, field, story);
    teeTriggers = new TeeTriggers(network, state, field);
    crestTriggers = new CrestTriggers(network, state, field);
    controlTriggers = new ControlTriggers(network, state, field, story, agenda);
    watch = new Watch(network, state, field, story);
    stepper = with.make(network, state, field);
    whereabouts = new Whereabouts(network, state, field);
    salt = new Salt(network, state.salt);
    recorder = new Recorder(network, story);
    onItsWay = new StillOnItsWay(network, state, recorder, carriedBefore);
    neverRan = new NeverRan(network, recorder, carriedBefore);
    end = new EndWatch(network, state, field, recorder, agenda, salt, usualInflow);
  }

  /**
   * Normal operation, from the declared levels to where they settle.
   *
   * @throws NoAnswer if it comes to no answer
   */
  public static Course ofNormalOperation(
      FlowNetwork network, Accuracy accuracy, BooleanSupplier cancelled) {
    return ofNormalOperation(network, implicit(accuracy), cancelled);
  }

  static Course ofNormalOperation(
      FlowNetwork network, Stepper.Maker with, BooleanSupplier cancelled) {
    return new Simulation(network, Beginning.asDeclared(network), 0, Set.of(), with, cancelled)
        .run();
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
    return ofFailure(normal, failed, implicit(accuracy), cancelled);
  }

  static Course ofFailure(
      Course normal, FlowNetwork failed, Stepper.Maker with, BooleanSupplier cancelled) {
    State state = Beginning.after(normal.network(), normal.state(), failed);
    return new Simulation(failed, state, normal.inflow, normal.carrying, with, cancelled).run();
  }

  private static Stepper.Maker implicit(Accuracy accuracy) {
    return (network, state, field) -> new ImplicitStepper(network, state, field, accuracy);
  }

  private Course run() {
    double[] volumesBefore = state.volumes.clone();
    double[] saltBefore = state.salt.clone();
    enterEffects();
    field.rewire();
    field.evaluate(state.volumes);
    recorder.begin(state.time, field.levels);
    settle();
    recorder.noteHighest(state.time, field.levels);
    double proposed = FIRST_STEP;
    for (int taken = 0; !end.reached() || movesOn(); taken++) {
      if (taken > MOST_STEPS) {
        throw new NoAnswer("it went on without settling; " + whereabouts.now());
      }
      if (cancelled.getAsBoolean()) {
        throw new NoAnswer("it was cancelled");
      }
      double most = Math.min(agenda.next(), network.away()) - state.time;
      if (most > 0) {
        proposed = advance(Math.min(proposed, most));
      }
      if (agenda.doDue() || Trigger.anyDue(triggers)) {
        settle();
        recorder.noteHighest(state.time, field.levels);
        end.modesChanged();
        proposed = Math.min(proposed, FIRST_STEP);
      }
    }
    onItsWay.tell(story, field.flows);
    List<Note> notes = new ArrayList<>(watch.atVapourPressure());
    notes.addAll(onItsWay.notes(field.flows));
    notes.addAll(neverRan.notes());
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
        end.usualInflow(),
        end.countedUntil(),
        onItsWay.carrying(field.flows));
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
    Stepper.Step step = stepper.advance(longest, triggers);
    salt.carry(state.volumes, step.moved());
    onItsWay.look(state.time, step.length(), step.moved());
    recorder.take(state.time, step.length(), step.moved(), step.within(), field.levels);
    System.arraycopy(step.volumes(), 0, state.volumes, 0, state.volumes.length);
    state.time += step.length();
    watch.look();
    return step.next();
  }

  /** Does what is due at this moment until nothing more is. */
  private void settle() {
    Deque<String> last = new ArrayDeque<>();
    for (int action = 0; action < MOST_ACTIONS_AT_ONCE; action++) {
      agenda.doDue();
      controlTriggers.runTimers();
      watch.parts(state.board.update());
      field.rewire();
      stepper.begin();
      triggers = new ArrayList<>();
      controlTriggers.addTo(triggers);
      pipeTriggers.addTo(triggers);
      teeTriggers.addTo(triggers);
      crestTriggers.addTo(triggers);
      watch.addTo(triggers);
      Optional<Trigger> due = triggers.stream().filter(Trigger::isDue).findFirst();
      if (due.isEmpty() && agenda.next() > state.time) {
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
        "its parts switch to and fro without end ("
            + String.join(", ", last)
            + "); "
            + whereabouts.now());
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
