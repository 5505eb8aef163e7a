package dryfloor.analysis.simulation;

import dryfloor.analysis.hydraulics.Siphon;
import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.network.Pipe;
import dryfloor.analysis.outcome.StoryEvent.What;
import java.util.List;

/**
 * When the water in a leg of a pipe with air at its crest begins to move, comes to rest, reaches
 * the crest or falls back from it.
 *
 * <p>The pipe is full again when both legs are full to the crest; when a pump lifts water over the
 * crest; or when water falls in over a lip that is drowned by its bore, fast enough to carry the
 * air along.
 */
final class LegTriggers {

  /** A column at rest begins to move when it is short of, or has too much by, this (m³). */
  private static final double WAKES = 1e-5;

  /** Flows smaller than this do not count as sucking (m³/s). */
  private static final double NOTHING = 1e-10;

  private static final double NEVER = 1;

  private final FlowNetwork network;
  private final State state;
  private final FlowField field;
  private final Columns columns;
  private final Story story;

  /** Every pipe as it would be full, in the present modes. */
  private final FullPipe[] fullPipes;

  LegTriggers(
      FlowNetwork network,
      State state,
      FlowField field,
      Columns columns,
      FullPipe[] fullPipes,
      Story story) {
    this.network = network;
    this.state = state;
    this.field = field;
    this.columns = columns;
    this.fullPipes = fullPipes;
    this.story = story;
  }

  void addTo(int i, int side, List<Trigger> triggers) {
    switch (state.pipes[i].legs[side]) {
      case AT_REST -> addForResting(i, side, triggers);
      case MOVING -> addForMoving(i, side, triggers);
      case FILLING -> addForFilling(i, side, triggers);
      case BRIMFUL -> addForBrimful(i, side, triggers);
    }
  }

  private void addForResting(int i, int side, List<Trigger> triggers) {
    Pipe pipe = network.pipes().get(i);
    PipeMode mode = state.pipes[i];
    if (columns.atFullTee(pipe, side)) {
      triggers.add(
          new Trigger(
              pipe.run() + " moves at a full junction",
              () -> -1,
              () -> mode.legs[side] = PipeMode.Leg.MOVING));
      return;
    }
    if (side == 0 && field.builder.laws(i).isPumped(0)) {
      triggers.add(
          new Trigger(
              pipe.run() + " is moved by its pump",
              () -> -1,
              () -> mode.legs[side] = PipeMode.Leg.MOVING));
      return;
    }
    PipeBranch probe = field.builder.moving(i, side);
    triggers.add(
        new Trigger(
            pipe.run() + " stands at its crest",
            () -> columns.standsAtCrest(i, side) ? -1 : NEVER,
            () -> mode.legs[side] = PipeMode.Leg.BRIMFUL));
    triggers.add(
        new Trigger(
            pipe.run() + " begins to move",
            () -> wakes(i, side, probe),
            () -> mode.legs[side] = PipeMode.Leg.MOVING));
  }

  /** How far a column at rest is from being moved (m³, or m from its crest). */
  private double wakes(int i, int side, PipeBranch probe) {
    Pipe pipe = network.pipes().get(i);
    double far = WAKES - columns.misplaced(i, side);
    double brim = columns.brim(i, side);
    double needed =
        columns.column(pipe, side) < brim - Columns.BRIM
            ? Math.min(far, brim - columns.belongs(pipe, side))
            : far;
    return needed <= 0 && !columns.wouldFlow(probe) ? NEVER : needed;
  }

  private void addForMoving(int i, int side, List<Trigger> triggers) {
    Pipe pipe = network.pipes().get(i);
    PipeMode mode = state.pipes[i];
    if (mode.legs[1 - side] == PipeMode.Leg.BRIMFUL) {
      triggers.add(
          new Trigger(
              pipe.run() + " primes",
              () ->
                  fedFlow(i, side) > NOTHING && mayFill(i)
                      ? columns.brim(i, side) - columns.column(pipe, side)
                      : NEVER,
              () -> prime(i)));
    }
    triggers.add(
        new Trigger(
            pipe.run() + " stands at its crest",
            () -> {
              if (isFed(i, side)) {
                return NEVER;
              }
              double below = columns.brim(i, side) - columns.column(pipe, side);
              return columns.standsAtCrest(i, side)
                  ? below - Columns.BRIM
                  : columns.rises(pipe, side) ? below : NEVER;
            },
            () -> mode.legs[side] = PipeMode.Leg.BRIMFUL));
    boolean pumped = side == 0 && field.builder.laws(i).isPumped(0);
    if (!columns.atFullTee(pipe, side) && !pumped) {
      PipeBranch branch = field.pipes[i].legs().get(side).orElseThrow();
      triggers.add(
          Trigger.unhurried(
              pipe.run() + " comes to rest",
              () -> {
                if (isFed(i, side) || columns.belongs(pipe, side) >= columns.brim(i, side)) {
                  return Math.abs(branch.flow) > 0 ? NEVER : isFed(i, side) ? NEVER : -1;
                }
                if (columns.isTakenAlong(pipe, side)) {
                  return NEVER;
                }
                double away = columns.misplaced(i, side) - Columns.THERE;
                return Math.min(away, Math.abs(branch.flow) - NOTHING * NOTHING);
              },
              () -> mode.legs[side] = PipeMode.Leg.AT_REST));
    }
  }

  /** Whether water comes over the crest into the leg on this side. */
  private boolean isFed(int i, int side) {
    return state.pipes[i].legs[1 - side] == PipeMode.Leg.BRIMFUL && fedFlow(i, side) > NOTHING;
  }

  /** Whether the pipe may be full again, once both its legs are. */
  private boolean mayFill(int i) {
    Pipe pipe = network.pipes().get(i);
    return state.pipes[i].staysOpen()
        ? bothCovered(pipe) && fullPipes[i].wouldStayFullAgain(overCrest(i))
        : fullPipes[i].wouldStayFullAgain(overCrest(i));
  }

  /** Flow over the crest into the leg on this side (m³/s). */
  private double fedFlow(int i, int side) {
    return field.pipes[i].legs().get(1 - side).map(branch -> branch.flow).orElse(0.0);
  }

  private void addForFilling(int i, int side, List<Trigger> triggers) {
    Pipe pipe = network.pipes().get(i);
    PipeMode mode = state.pipes[i];
    triggers.add(
        new Trigger(
            pipe.run() + " has filled",
            () -> columns.brim(i, side) - columns.column(pipe, side),
            () -> mode.legs[side] = PipeMode.Leg.BRIMFUL));
    triggers.add(
        new Trigger(
            pipe.run() + " fills no more",
            () -> fedFlow(i, side) - NOTHING,
            () -> {
              mode.breaks++;
              mode.legs[side] = PipeMode.Leg.MOVING;
            }));
  }

  private void addForBrimful(int i, int side, List<Trigger> triggers) {
    Pipe pipe = network.pipes().get(i);
    PipeMode mode = state.pipes[i];
    PipeBranch branch = field.pipes[i].legs().get(side).orElseThrow();
    int far = 1 - side;
    if (!pipe.leg(side).negligible()) {
      if (mode.legs[far] == PipeMode.Leg.BRIMFUL) {
        boolean reachesCrest = !pipe.leg(far).negligible();
        triggers.add(
            new Trigger(
                pipe.run() + " primes",
                () -> (reachesCrest || fedFlow(i, side) > NOTHING) && mayFill(i) ? -1 : NEVER,
                () -> prime(i)));
      }
      triggers.add(
          new Trigger(
              pipe.run() + " falls back from its crest",
              () -> branch.driven + NOTHING,
              () -> mode.legs[side] = PipeMode.Leg.MOVING));
    }
    if (pipe.leg(far).negligible()) {
      boolean lifted = !pipe.leg(side).negligible();
      triggers.add(
          new Trigger(
              pipe.run() + " primes at its end",
              () ->
                  ((lifted && branch.flow > NOTHING) || bothCovered(pipe))
                          && fullPipes[i].wouldStayFullAgain(overCrest(i))
                      ? -1
                      : NEVER,
              () -> prime(i)));
    } else if (mode.legs[far] == PipeMode.Leg.AT_REST || mode.legs[far] == PipeMode.Leg.MOVING) {
      addForFarLeg(i, side, triggers);
    }
  }

  /** Flow over the crest in the direction of the pipe (m³/s). */
  private double overCrest(int i) {
    double sum = 0;
    for (int side = 0; side < 2; side++) {
      if (state.pipes[i].legs[side] == PipeMode.Leg.BRIMFUL) {
        double flow = field.pipes[i].legs().get(side).map(branch -> branch.flow).orElse(0.0);
        sum += side == 0 ? flow : -flow;
      }
    }
    return sum;
  }

  private boolean bothCovered(Pipe pipe) {
    return columns.belongs(pipe, 0) > pipe.crest() && columns.belongs(pipe, 1) > pipe.crest();
  }

  /** Water passes over the crest from this side: does the far leg fill? */
  private void addForFarLeg(int i, int side, List<Trigger> triggers) {
    Pipe pipe = network.pipes().get(i);
    PipeMode mode = state.pipes[i];
    PipeBranch branch = field.pipes[i].legs().get(side).orElseThrow();
    int far = 1 - side;
    Runnable fill = () -> mode.legs[far] = PipeMode.Leg.FILLING;
    if (mode.staysOpen()) {
      return;
    }
    if (!pipe.vented()) {
      boolean lifted = side == 0 && field.builder.laws(i).isPumped(0);
      double clearing = Siphon.primingFlow(pipe.bore(), pipe.primesEarly());
      triggers.add(
          new Trigger(
              pipe.run() + " begins to fill",
              () -> {
                double slow = (lifted ? fills(branch) : clearing) - branch.flow;
                double shallow =
                    lifted ? -1 : pipe.crest() + pipe.bore() - columns.belongs(pipe, side);
                if (!lifted && slow > 0 && shallow <= 0 && isLip(pipe, side)) {
                  noteDoubt(i, branch.flow);
                }
                double needed = Math.max(slow, shallow);
                return needed <= 0 && !fullPipes[i].wouldStayFullAgain(overCrest(i))
                    ? NEVER
                    : needed;
              },
              fill));
    }
    if (mode.legs[far] == PipeMode.Leg.AT_REST) {
      PipeBranch beyond = field.builder.fromCrest(i, far);
      triggers.add(
          new Trigger(
              pipe.run() + " backs up",
              () -> branch.flow > NOTHING ? capacity(beyond, pipe) - branch.flow : NEVER,
              () -> mode.legs[far] = PipeMode.Leg.MOVING));
    }
  }

  /** Whether water falls from a vessel straight into the leg beyond, as into a standpipe. */
  private boolean isLip(Pipe pipe, int side) {
    return pipe.leg(side).negligible() && !pipe.leg(side).end().atJunction();
  }

  /** Water over the drowned lip that is not certain to fill the leg beyond may fill it yet. */
  private void noteDoubt(int i, double flow) {
    Pipe pipe = network.pipes().get(i);
    if (flow >= Siphon.primingFlow(pipe.bore(), true)
        && !state.doubtfulPrimings.contains(pipe.run())
        && fullPipes[i].wouldStayFullAgain(overCrest(i))) {
      state.doubtfulPrimings.add(pipe.run());
    }
  }

  /**
   * Flow (m³/s) at which a pump fills the leg beyond its crest: one that is short of water can't.
   */
  private static double fills(PipeBranch lifting) {
    return Math.max(NOTHING, lifting.driven / 2);
  }

  /** Flow (m³/s) that a leg beyond the crest carries away at most without filling. */
  private double capacity(PipeBranch beyond, Pipe pipe) {
    beyond.solve(pipe.crest(), field.head(beyond.ends[1]), field.levels);
    return Math.max(beyond.flow, 0);
  }

  private void prime(int i) {
    Pipe pipe = network.pipes().get(i);
    PipeMode mode = state.pipes[i];
    mode.full = true;
    story.tell(state.time, What.RUN_PRIMES, pipe.run(), "");
  }
}
