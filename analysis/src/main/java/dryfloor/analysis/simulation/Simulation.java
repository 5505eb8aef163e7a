package dryfloor.analysis.simulation;

import dryfloor.analysis.failure.Stage;
import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.network.Succession;
import dryfloor.analysis.outcome.Note;
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
  private final Story story;
  private final Agenda agenda;
  private final TimedEffects timed;
  private final PipeTriggers pipeTriggers;
  private final TeeTriggers teeTriggers;
  private final CrestTriggers crestTriggers;
  private final ControlTriggers controlTriggers;
  private final Watch watch;
  private final Afloat afloat;
  private final Stepper stepper;
  private final Salt salt;
  private final Recorder recorder;
  private final StillOnItsWay onItsWay;
  private final NeverRan neverRan;
  private final EndWatch end;
  private final Whereabouts whereabouts;
  private final BooleanSupplier cancelled;

  /** What there was when all began. */
  private final double[] volumesBefore;

  private final double[] saltBefore;

  // What the next stage of a sequence needs to know.
  private final double usualInflow;
  private final Set<String> carriedBefore;
  private final Stepper.Maker with;

  private List<Trigger> triggers = List.of();

  /** Length of the step to try next (s). */
  private double proposed = FIRST_STEP;

  private int taken;

  private Simulation(
      FlowNetwork network,
      State state,
      double usualInflow,
      Set<String> carriedBefore,
      Stepper.Maker with,
      BooleanSupplier cancelled) {
    this(
        network, state, usualInflow, carriedBefore, with, cancelled, new Story(), Optional.empty());
  }

  private Simulation(
      FlowNetwork network,
      State state,
      double usualInflow,
      Set<String> carriedBefore,
      Stepper.Maker with,
      BooleanSupplier cancelled,
      Story story,
      Optional<Recorder> books) {
    this.network = network;
    this.state = state;
    this.usualInflow = usualInflow;
    this.carriedBefore = carriedBefore;
    this.with = with;
    this.cancelled = cancelled;
    this.story = story;
    volumesBefore = state.volumes.clone();
    saltBefore = state.salt.clone();
    field = new FlowField(network, state);
    agenda = new Agenda(state);
    pipeTriggers = new PipeTriggers(network, state, field, story);
    crestTriggers = new CrestTriggers(network, state, field);
    controlTriggers = new ControlTriggers(network, state, field, story, agenda);
    afloat = new Afloat(network, state, field);
    watch = new Watch(network, state, field, story, carriedBefore);
    stepper = with.make(network, state, field);
    whereabouts = new Whereabouts(network, state, field);
    salt = new Salt(network, state.salt);
    recorder = books.orElseGet(() -> new Recorder(network, story));
    teeTriggers =
        new TeeTriggers(network, state, field, new TeePool(network, state, field, recorder, salt));
    timed = new TimedEffects(network, state, agenda, story, salt, recorder);
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
    List<Stage> stages = Stage.of(failed.effects());
    FlowNetwork first = compiled(failed, stages.getFirst());
    State state = Beginning.after(normal.network(), normal.state(), first);
    Simulation simulation =
        new Simulation(first, state, normal.inflow, normal.carrying, with, cancelled);
    for (int i = 1; i < stages.size() && stages.get(i).begins() < failed.away(); i++) {
      simulation.runUntil(stages.get(i).begins());
      simulation = simulation.goingOn(stages.get(i).begins(), compiled(failed, stages.get(i)));
    }
    return simulation.run();
  }

  private static FlowNetwork compiled(FlowNetwork failed, Stage stage) {
    return stage.effects().equals(failed.effects())
        ? failed
        : FlowNetwork.of(failed.installation(), stage.effects());
  }

  /** The next stage of a sequence, from where this one ended: other things are built in. */
  private Simulation goingOn(double from, FlowNetwork compiled) {
    Succession succession = Succession.of(network, compiled);
    Simulation after =
        new Simulation(
            succession.network(),
            Beginning.goingOn(network, state, succession, from),
            usualInflow,
            carriedBefore,
            with,
            cancelled,
            story,
            Optional.of(new Recorder(recorder, succession)));
    handOn(volumesBefore, state.volumes, after.volumesBefore, succession);
    handOn(saltBefore, state.salt, after.saltBefore, succession);
    after.salt.goOn(salt, succession);
    after.watch.goOn(watch, succession);
    after.afloat.goOn(afloat);
    after.onItsWay.goOn(onItsWay, succession);
    after.controlTriggers.goOnWaiting(agenda.waiting());
    after.timed.goOnWaiting();
    return after;
  }

  /**
   * Takes over what there was when all began. What stands in a run may be booked under other places
   * now that it is in other pieces: it counts as if it had been so from the start.
   *
   * @param now what there is in the places of the next stage, which takes what there was before
   */
  private static void handOn(double[] first, double[] ended, double[] now, Succession succession) {
    double[] endedBefore = succession.places(ended);
    double[] firstBefore = succession.places(first);
    for (int place = 0; place < now.length; place++) {
      now[place] += firstBefore[place] - endedBefore[place];
    }
  }

  private static Stepper.Maker implicit(Accuracy accuracy) {
    return (network, state, field) -> new ImplicitStepper(network, state, field, accuracy);
  }

  /** Goes up to a time at which other things are to be built in (s). */
  private void runUntil(double time) {
    begin(time);
    // As long as something is due, nothing is over before it.
    agenda.at(time, () -> {});
    while (state.time < time) {
      goOn();
    }
    salt.finish();
  }

  private Course run() {
    begin(Double.POSITIVE_INFINITY);
    while (!end.reached() || movesOn()) {
      goOn();
    }
    onItsWay.tell(story, field.flows);
    List<Note> notes = new ArrayList<>(watch.atVapourPressure());
    notes.addAll(onItsWay.notes(field.flows));
    notes.addAll(neverRan.notes());
    notes.addAll(afloat.notes());
    notes.addAll(teeTriggers.drips());
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
        onItsWay.carrying(field.flows),
        teeTriggers.drainsThatSuckAtTheirHole());
  }

  private void begin(double until) {
    timed.enter(until);
    field.rewire();
    field.evaluate(state.volumes);
    recorder.begin(state.time, field.levels);
    settle();
    recorder.noteHighest(state.time, field.levels);
    proposed = FIRST_STEP;
  }

  /** Takes a step as long as nothing is due, does what is due, and settles. */
  private void goOn() {
    if (taken++ > MOST_STEPS) {
      throw new NoAnswer("it went on without settling; " + whereabouts.now());
    }
    if (cancelled.getAsBoolean()) {
      throw new NoAnswer("it was cancelled");
    }
    double most = Math.min(agenda.next(), network.away()) - state.time;
    boolean due = most > 0 && advance(Math.min(proposed, most));
    if (agenda.doDue() || due) {
      settle();
      recorder.noteHighest(state.time, field.levels);
      end.modesChanged();
      proposed = Math.min(proposed, FIRST_STEP);
    }
  }

  /** Whether columns that were left at rest have to go a last bit before this is the end. */
  private boolean movesOn() {
    boolean any = end.isStill() && pipeTriggers.wakeColumns();
    if (any) {
      settle();
    }
    return any;
  }

  /** Takes one step of at most this length; returns whether anything is due at its end. */
  private boolean advance(double longest) {
    Stepper.Step step = stepper.advance(longest, triggers);
    salt.carry(state.volumes, step.moved());
    onItsWay.look(state.time, step.length(), step.moved());
    recorder.take(state.time, step.length(), step.moved(), step.within(), field.levels);
    System.arraycopy(step.volumes(), 0, state.volumes, 0, state.volumes.length);
    state.time += step.length();
    watch.look();
    afloat.look();
    proposed = step.next();
    return step.due();
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
}
