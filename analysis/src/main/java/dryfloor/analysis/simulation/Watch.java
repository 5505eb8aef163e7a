package dryfloor.analysis.simulation;

import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.network.Pipe;
import dryfloor.analysis.network.Place;
import dryfloor.analysis.network.PoweredPart;
import dryfloor.analysis.network.Succession;
import dryfloor.analysis.outcome.Note;
import dryfloor.analysis.outcome.StoryEvent.What;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;

/** Sees what a person standing by would notice, and lets pumps that suck air lose their prime. */
final class Watch {

  /** A flow that counts as running (m³/s): 6 mL a minute. */
  private static final double RUNS = 1e-7;

  /** A vessel with less water than this in it is empty (m). */
  private static final double EMPTY = 1e-3;

  private final FlowNetwork network;
  private final State state;
  private final FlowField field;
  private final Story story;
  private final Set<Integer> suckedAir = new HashSet<>();
  private final Set<Integer> wet = new HashSet<>();
  private final Set<Integer> ranEmpty = new HashSet<>();
  private final Set<Integer> began = new HashSet<>();
  private final Map<String, Note> atVapourPressure = new TreeMap<>();
  private final double[] direction;

  /** Water in each place at the beginning (m³). */
  private final double[] hadWater;

  /** Basins and floors. */
  private final int[] below;

  private final int[] vessels;

  /**
   * Looks from the beginning on.
   *
   * @param carriedBefore runs that carried water before, which is no news
   */
  Watch(FlowNetwork network, State state, FlowField field, Story story, Set<String> carriedBefore) {
    this.network = network;
    this.state = state;
    this.field = field;
    this.story = story;
    direction = new double[network.pipes().size()];
    hadWater = state.volumes.clone();
    below = places(EnumSet.of(Place.Kind.BASIN, Place.Kind.FLOOR));
    vessels = places(EnumSet.of(Place.Kind.VESSEL));
    for (int i = 0; i < direction.length; i++) {
      if (carriedBefore.contains(network.pipes().get(i).run())) {
        began.add(i);
      }
    }
  }

  private int[] places(Set<Place.Kind> kinds) {
    return IntStream.range(0, network.places().size())
        .filter(place -> kinds.contains(network.places().get(place).kind()))
        .toArray();
  }

  /** Takes over what was noticed before; what has changed since is looked at anew. */
  void goOn(Watch before, Succession succession) {
    suckedAir.addAll(before.suckedAir);
    before.wet.forEach(place -> wet.add(succession.place(place)));
    before.ranEmpty.forEach(place -> ranEmpty.add(succession.place(place)));
    before.began.stream().map(succession::pipe).filter(pipe -> pipe >= 0).forEach(began::add);
    atVapourPressure.putAll(before.atVapourPressure);
    succession.pipes(before.direction, direction);
    succession.places(before.hadWater, hadWater);
  }

  /** Pumps that suck air. */
  void addTo(List<Trigger> triggers) {
    for (int i = 0; i < network.parts().size(); i++) {
      PoweredPart part = network.parts().get(i);
      if (part.inlet() >= 0 && state.board.runs(i) && !suckedAir.contains(i)) {
        int pump = i;
        triggers.add(
            new Trigger(
                part.id() + " sucks air",
                () -> field.levels[part.inlet()] - part.inletElevation() - InletDepths.SKIN,
                () -> suckAir(pump, part)));
      }
    }
  }

  private void suckAir(int pump, PoweredPart part) {
    suckedAir.add(pump);
    String vessel = network.places().get(part.inlet()).id();
    if (part.primesAgain()) {
      story.tell(state.time, What.SUCKS_AIR, part.id(), vessel);
    } else {
      state.board.losePrime(pump);
      story.tell(state.time, What.LOSES_PRIME, part.id(), vessel);
    }
  }

  /** Parts that started, stopped or moved. */
  void parts(List<Integer> changed) {
    for (int part : changed) {
      PoweredPart what = network.parts().get(part);
      boolean runs = state.board.runs(part);
      if (what.valve().isPresent()) {
        boolean open = state.board.opening(part) > 0;
        story.tell(state.time, open ? What.OPENS : What.CLOSES, what.id(), "");
      } else {
        story.tell(state.time, runs ? What.STARTS : What.STOPS, what.id(), "");
      }
    }
  }

  /** Looks round after a step. */
  void look() {
    for (int place : below) {
      if (state.volumes[place] > Recorder.COUNTS && wet.add(place)) {
        Place what = network.places().get(place);
        story.tell(
            state.time,
            what.kind() == Place.Kind.BASIN ? What.CATCHES : What.FLOOR_WET,
            what.id(),
            "");
      }
    }
    for (int place : vessels) {
      lookWhetherEmpty(place);
    }
    for (int i = 0; i < direction.length; i++) {
      lookAt(i);
    }
  }

  private void lookWhetherEmpty(int place) {
    Place what = network.places().get(place);
    boolean empty = field.gains[place] <= 0 && field.levels[place] - what.table().bottom() < EMPTY;
    if (empty && state.volumes[place] < hadWater[place] && ranEmpty.add(place)) {
      story.tell(state.time, What.EMPTY, what.id(), "");
    }
  }

  /** Runs in which the pressure fell to that of vapour, and where. */
  List<Note> atVapourPressure() {
    return List.copyOf(atVapourPressure.values());
  }

  private void lookForVapour(Pipe pipe, PipeBranch through) {
    through
        .vapourPoint()
        .ifPresent(
            point ->
                atVapourPressure.putIfAbsent(
                    pipe.run(),
                    new Note.AtVapourPressure(
                        pipe.run(), pipe.cutFrom() + point.along(), point.elevation())));
  }

  private void lookAt(int i) {
    Pipe pipe = network.pipes().get(i);
    double flow = field.flows[pipe.throughSlot()];
    field.pipes[i].through().ifPresent(through -> lookForVapour(pipe, through));
    if (Math.abs(flow) < RUNS) {
      return;
    }
    if (flow > 0 && !pipe.startsFull() && began.add(i)) {
      String taker = network.places().get(pipe.leg(1).end().place()).id();
      story.tell(state.time, What.BEGINS_TO_FLOW, pipe.run(), taker);
    }
    double now = Math.signum(flow);
    if (now < 0 && direction[i] >= 0 && state.pipes[i].full) {
      String taker = network.places().get(pipe.leg(0).end().place()).id();
      story.tell(state.time, What.RUNS_BACKWARDS, pipe.run(), taker);
    }
    direction[i] = now;
  }
}
