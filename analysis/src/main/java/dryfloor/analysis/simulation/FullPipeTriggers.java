package dryfloor.analysis.simulation;

import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.network.Pipe;
import dryfloor.analysis.network.PipeLaw;
import dryfloor.analysis.outcome.StoryEvent.What;
import java.util.List;

/**
 * When a full pipe takes air: where an end that would suck is uncovered, at a hole that is open to
 * the air with less than atmospheric pressure behind it, and at a crest that no siphon can lift to.
 * What stands in it then falls on both sides of the crest.
 */
final class FullPipeTriggers {

  /** Less water than this falls unnoticed (m³). */
  private static final double WORTH_TELLING = 5e-5;

  private final FlowNetwork network;
  private final State state;
  private final FlowField field;
  private final Columns columns;
  private final Story story;

  FullPipeTriggers(
      FlowNetwork network, State state, FlowField field, Columns columns, Story story) {
    this.network = network;
    this.state = state;
    this.field = field;
    this.columns = columns;
    this.story = story;
  }

  void addTo(int i, FullPipe full, List<Trigger> triggers) {
    Pipe pipe = network.pipes().get(i);
    for (int side = 0; side < 2; side++) {
      int at = side;
      triggers.add(
          new Trigger(
              pipe.run() + " takes air at its end",
              () -> full.cover(at),
              () -> {
                story.tell(state.time, What.TAKES_AIR_AT_OPENING, pipe.run(), placeId(pipe, at));
                takeAir(i);
              }));
    }
    triggers.add(
        new Trigger(
            pipe.run() + " runs out level",
            full::coverOfLevel,
            () -> {
              story.tell(state.time, What.TAKES_AIR_AT_OPENING, pipe.run(), placeId(pipe, 1));
              takeAir(i);
            }));
    for (FullPipe.Hole hole : full.holes()) {
      triggers.add(
          new Trigger(
              pipe.run() + " takes air at its siphon break",
              () -> full.holds(hole),
              () -> {
                story.tell(state.time, What.SIPHON_BREAKS, hole.fixture().id(), pipe.run());
                takeAir(i);
              }));
    }
    triggers.add(
        new Trigger(
            pipe.run() + " parts at its crest",
            full::crestHolds,
            () -> {
              story.tell(state.time, What.COLUMN_PARTS, pipe.run(), "");
              takeAir(i);
            }));
  }

  private void takeAir(int i) {
    Pipe pipe = network.pipes().get(i);
    PipeMode mode = state.pipes[i];
    mode.full = false;
    mode.breaks++;
    for (int side = 0; side < 2; side++) {
      mode.legs[side] = pipe.leg(side).negligible() ? PipeMode.Leg.BRIMFUL : PipeMode.Leg.MOVING;
      tellEmptying(i, side);
    }
  }

  /** What stands above the level at the end of a leg falls to it, where nothing holds it back. */
  private void tellEmptying(int i, int side) {
    Pipe pipe = network.pipes().get(i);
    Pipe.Leg leg = pipe.leg(side);
    PipeLaw law = field.builder.laws(i).leg(side);
    boolean held =
        switch (law.passage()) {
          case BLOCKED -> true;
          case BOTH_WAYS -> false;
          case FORWARD_ONLY -> side == 0 && law.leakArea() <= 0;
        };
    double stays = network.places().get(leg.column()).table().volume(columns.belongs(pipe, side));
    double falls = state.volumes[leg.column()] - Math.max(stays, 0);
    if (!held && falls > WORTH_TELLING) {
      story.tell(state.time, What.RUN_EMPTIES, pipe.run(), placeId(pipe, side), falls);
    }
  }

  private String placeId(Pipe pipe, int side) {
    return network.places().get(pipe.leg(side).end().place()).id();
  }
}
