package dryfloor.analysis.simulation;

import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.network.LevelTable;
import dryfloor.analysis.network.Pipe;
import dryfloor.analysis.network.Place;
import dryfloor.analysis.network.Succession;
import dryfloor.analysis.outcome.Note;
import dryfloor.analysis.outcome.StoryEvent;
import dryfloor.analysis.outcome.StoryEvent.What;
import dryfloor.model.element.Vessel;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Water that still comes through a run after what drove it has stopped: a display that goes on
 * running over once the pump stands.
 *
 * <p>What comes through a run from the moment it was last driven ({@link DrivenFlows}) until it has
 * ceased is told, at that moment; a run that is driven again, or never ceases, or was never driven
 * is not told of. Water that stood in the run itself is told where it empties.
 */
final class StillOnItsWay {

  /** A flow that has ceased (m³/s). */
  private static final double CEASED = 1e-8;

  /** Less water than this is not worth telling (m³). */
  private static final double WORTH_TELLING = 5e-4;

  /** A rise that is worth a note (m). */
  private static final double WORTH_A_NOTE = 1e-3;

  private final FlowNetwork network;
  private final State state;
  private final Recorder recorder;
  private final Set<String> drivenBefore;
  private final boolean[] everDriven;

  /** When each pipe was last driven (s), or NaN while it is. */
  private final double[] since;

  /** What had come out of its second end by then (m³). */
  private final double[] until;

  /** What ran in it then with air above (m³). */
  private final double[] running;

  private final DrivenFlows flows;

  /**
   * Nothing has moved yet.
   *
   * @param drivenBefore runs that carried water when all was well
   */
  StillOnItsWay(FlowNetwork network, State state, Recorder recorder, Set<String> drivenBefore) {
    this.network = network;
    this.state = state;
    this.recorder = recorder;
    this.drivenBefore = drivenBefore;
    int pipes = network.pipes().size();
    everDriven = new boolean[pipes];
    since = new double[pipes];
    Arrays.fill(since, Double.NaN);
    until = new double[pipes];
    running = new double[pipes];
    flows = new DrivenFlows(network, state);
  }

  /** Takes over what is known of runs that are still the same. */
  void goOn(StillOnItsWay before, Succession succession) {
    for (int i = 0; i < before.since.length; i++) {
      int now = succession.pipe(i);
      if (now >= 0) {
        everDriven[now] = before.everDriven[i];
        since[now] = before.since[i];
        until[now] = before.until[i];
        running[now] = before.running[i];
      }
    }
  }

  /** Looks at a step before it is taken down. */
  void look(double start, double h, double[] moved) {
    flows.look(h, moved);
    for (int i = 0; i < since.length; i++) {
      Pipe pipe = network.pipes().get(i);
      if (intoSecondEnd(pipe, moved) < DrivenFlows.RUNS * h) {
        continue;
      }
      if (flows.isDriven(i)) {
        everDriven[i] = true;
        since[i] = Double.NaN;
      } else if (Double.isNaN(since[i]) && (everDriven[i] || drivenBefore.contains(pipe.run()))) {
        since[i] = start;
        until[i] = cameOut(pipe);
        running[i] = running(i, intoSecondEnd(pipe, moved) / h);
      }
    }
  }

  /** Water on its way in a run that has air in it (m³). */
  private double running(int i, double flow) {
    Pipe pipe = network.pipes().get(i);
    int column = pipe.leg(1).column();
    double standing = network.places().get(column).table().level(state.volumes[column]);
    return state.pipes[i].full ? 0 : WaterInOpenRun.volume(pipe, flow, standing);
  }

  /** Tells what still came, once all is over. */
  void tell(Story story, double[] flowsAtEnd) {
    List<StoryEvent> told = List.copyOf(story.events());
    for (int i = 0; i < since.length; i++) {
      Pipe pipe = network.pipes().get(i);
      if (Double.isNaN(since[i]) || !tellsOf(pipe) || intoSecondEnd(pipe, flowsAtEnd) > CEASED) {
        continue;
      }
      String taker = takerOf(pipe).id();
      double stood = emptied(told, pipe.run(), taker, since[i]);
      double still = cameOut(pipe) - until[i] - stood;
      if (still > WORTH_TELLING) {
        story.tell(since[i], What.RUNS_OUT, pipe.run(), taker, still);
      }
    }
  }

  /** What was on its way in runs that ran partly full, once all is over, by where it goes. */
  List<Note> notes(double[] flowsAtEnd) {
    List<Note> notes = new ArrayList<>();
    for (Vessel vessel : network.installation().vessels()) {
      List<Integer> pipes = runningInto(vessel.id(), flowsAtEnd);
      if (!pipes.isEmpty()) {
        Note.RunPartlyFull note = note(vessel, pipes);
        if (note.rise() > WORTH_A_NOTE) {
          notes.add(note);
        }
      }
    }
    return notes;
  }

  /** Pipes with water on its way to a vessel that ceased to flow. */
  private List<Integer> runningInto(String vessel, double[] flowsAtEnd) {
    return IntStream.range(0, since.length)
        .filter(i -> !Double.isNaN(since[i]) && running[i] > 0)
        .filter(i -> tellsOf(network.pipes().get(i)))
        .filter(i -> takerOf(network.pipes().get(i)).id().equals(vessel))
        .filter(i -> intoSecondEnd(network.pipes().get(i), flowsAtEnd) <= CEASED)
        .boxed()
        .toList();
  }

  private Place takerOf(Pipe pipe) {
    return network.places().get(pipe.leg(1).end().place());
  }

  private Note.RunPartlyFull note(Vessel vessel, List<Integer> pipes) {
    double volume = pipes.stream().mapToDouble(i -> running[i]).sum();
    int place = network.pipes().get(pipes.getFirst()).leg(1).end().place();
    LevelTable table = network.places().get(place).table();
    double with = table.level(state.volumes[place] + volume);
    return new Note.RunPartlyFull(
        pipes.stream().map(i -> network.pipes().get(i).run()).toList(),
        vessel.id(),
        volume,
        with - table.level(state.volumes[place]),
        vessel.rim() - recorder.highest[place]);
  }

  /** Runs that carry water now. */
  Set<String> carrying(double[] flows) {
    return network.pipes().stream()
        .filter(pipe -> intoSecondEnd(pipe, flows) > DrivenFlows.RUNS)
        .map(Pipe::run)
        .collect(Collectors.toSet());
  }

  private boolean tellsOf(Pipe pipe) {
    boolean inside = network.accounts().get(pipe.throughSlot()).inside();
    return inside && !pipe.leg(1).end().atJunction();
  }

  /** What was told already when the run emptied itself (m³). */
  private static double emptied(List<StoryEvent> told, String run, String taker, double since) {
    return told.stream()
        .filter(event -> event.what() == What.RUN_EMPTIES && event.time() >= since)
        .filter(event -> event.subject().equals(run) && event.other().equals(taker))
        .mapToDouble(event -> event.volume().orElse(0))
        .sum();
  }

  private double cameOut(Pipe pipe) {
    return intoSecondEnd(pipe, recorder.carried[0]) - intoSecondEnd(pipe, recorder.carried[1]);
  }

  /** What goes into the place at the second end, less what comes back out of it. */
  private static double intoSecondEnd(Pipe pipe, double[] over) {
    return over[pipe.throughSlot()] - over[pipe.ownColumnSlot(1)] - over[pipe.farColumnSlot(1)];
  }
}
