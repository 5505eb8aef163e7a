package dryfloor.analysis.simulation;

import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.network.Path;
import dryfloor.analysis.network.Pipe;
import dryfloor.analysis.network.PipeEnd;
import java.util.List;

/**
 * When an edge or a hole is drowned from both sides, and when it is no longer; when the end of a
 * full pipe that may draw there is bared, and when it is covered.
 *
 * <p>While it is drowned, the two waters hang together so closely that long steps are taken for
 * both as one. The side that falls dry must not be taken along below the edge: its step ends there.
 * Nor can a pipe draw from a place what stands below its opening, however long the step.
 */
final class CrestTriggers {

  /**
   * An edge counts as drowned again with this much water over it, an end as covered; and as bared
   * with its place so far below it (m).
   */
  private static final double AGAIN = 1e-5;

  /** Drowning of an edge over which water leaves the drawing, and of what is no edge (m). */
  private static final double NEVER = -1e6;

  private final FlowNetwork network;
  private final State state;
  private final FlowField field;

  CrestTriggers(FlowNetwork network, State state, FlowField field) {
    this.network = network;
    this.state = state;
    this.field = field;
  }

  /** Nothing switches at these moments; the flows only follow another branch of their law. */
  void addTo(List<Trigger> triggers) {
    for (Path path : network.paths()) {
      if (drowning(path) > 0) {
        triggers.add(
            new Trigger(name(path) + " is drowned no more", () -> drowning(path), () -> {}));
      } else if (drowning(path) > NEVER) {
        triggers.add(
            new Trigger(name(path) + " is drowned", () -> AGAIN - drowning(path), () -> {}));
      }
    }
    for (int i = 0; i < state.pipes.length; i++) {
      addEndsOf(i, triggers);
    }
  }

  private void addEndsOf(int i, List<Trigger> triggers) {
    Pipe pipe = network.pipes().get(i);
    for (int side = 0; side < 2; side++) {
      if (mayDraw(i, side)) {
        int at = side;
        triggers.add(
            cover(pipe, side) > 0
                ? new Trigger(
                    pipe.run() + " has its end bared", () -> AGAIN + cover(pipe, at), () -> {})
                : new Trigger(
                    pipe.run() + " has its end covered", () -> AGAIN - cover(pipe, at), () -> {}));
      }
    }
  }

  /** Whether water comes out of an end: nothing can be drawn by it. */
  private boolean isFed(int i, int side) {
    double flow = field.flows[network.pipes().get(i).throughSlot()];
    return side == 0 ? flow < 0 : flow > 0;
  }

  /** Whether a full pipe can draw at an end from a place whose water may fall below it. */
  private boolean mayDraw(int i, int side) {
    PipeEnd end = network.pipes().get(i).leg(side).end();
    return state.pipes[i].full
        && !isFed(i, side)
        && !end.atJunction()
        && network.places().get(end.place()).kind().isShown();
  }

  /** Water over the end of a pipe (m). */
  private double cover(Pipe pipe, int side) {
    PipeEnd end = pipe.leg(side).end();
    return field.levels[end.place()] - end.elevation();
  }

  /** Whether each path is drowned, as part of the modes that a cycle repeats. */
  void tellModes(StringBuilder modes) {
    for (Path path : network.paths()) {
      modes.append(drowning(path) > 0 ? 'd' : '-');
    }
    for (int i = 0; i < state.pipes.length; i++) {
      for (int side = 0; side < 2; side++) {
        boolean covered = mayDraw(i, side) && cover(network.pipes().get(i), side) > 0;
        modes.append(covered ? 'c' : '-');
      }
    }
  }

  /** Water over the edge or hole on its lower side (m). */
  private double drowning(Path path) {
    return switch (path) {
      case Path.Edge edge -> lowerSide(edge) - edge.crest();
      case Path.Hole hole -> lowerSide(hole) - hole.elevation();
      case Path.Thrown thrown -> NEVER;
      case Path.Held held -> NEVER;
      case Path.PipeHole hole -> NEVER;
    };
  }

  private String name(Path path) {
    return "the edge of " + network.accounts().get(path.slot()).path();
  }

  private double lowerSide(Path path) {
    return Math.min(field.levels[path.from()], field.levels[path.to()]);
  }
}
