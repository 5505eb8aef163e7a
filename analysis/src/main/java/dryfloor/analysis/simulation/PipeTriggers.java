package dryfloor.analysis.simulation;

import dryfloor.analysis.hydraulics.Siphon;
import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.network.LevelTable;
import dryfloor.analysis.network.Pipe;
import dryfloor.analysis.network.PipeEnd;
import dryfloor.analysis.network.PipeLaw;
import dryfloor.analysis.network.Place;
import dryfloor.analysis.outcome.StoryEvent.What;
import java.util.ArrayList;
import java.util.List;

/**
 * When a pipe takes air, and when it fills again.
 *
 * <p>A full pipe takes air where an end that would suck is uncovered, at a hole that is open to the
 * air with less than atmospheric pressure behind it, and at a crest that no siphon can lift to.
 * What stands in it then falls on both sides of the crest.
 *
 * <p>It fills again when both legs are full to the crest; when a pump lifts water over the crest;
 * or when water falls in over a lip that is drowned by its bore, fast enough to carry the air
 * along.
 */
final class PipeTriggers {

  /** A column that lacks or has too much no more than this is where it belongs (m³). */
  private static final double THERE = 1e-6;

  /** A column at rest begins to move when it is short of, or has too much by, this (m³). */
  private static final double WAKES = 1e-5;

  /** Flows smaller than this do not count as sucking (m³/s). */
  private static final double NOTHING = 1e-10;

  /** A column whose end rises or falls so slowly is left at rest until it wakes (m³/s). */
  private static final double SLOW = 1e-9;

  /** A column is at the crest when it is this near (m). */
  private static final double BRIM = 1e-5;

  /** Less water than this falls unnoticed (m³). */
  private static final double WORTH_TELLING = 5e-5;

  private static final double NEVER = 1;

  private final FlowNetwork network;
  private final State state;
  private final FlowField field;

  /** Every pipe as it is or would be full, in the present modes. */
  private final FullPipe[] fullPipes;

  /** The triggers of every pipe, and the revision of its branches they were made for. */
  private final List<List<Trigger>> made = new ArrayList<>();

  private final int[] madeFor;

  private final Story story;

  PipeTriggers(FlowNetwork network, State state, FlowField field, Story story) {
    this.network = network;
    this.state = state;
    this.field = field;
    this.fullPipes = new FullPipe[network.pipes().size()];
    this.madeFor = new int[fullPipes.length];
    for (int i = 0; i < fullPipes.length; i++) {
      made.add(List.of());
    }
    this.story = story;
  }

  void addTo(List<Trigger> triggers) {
    for (int i = 0; i < madeFor.length; i++) {
      if (field.builder.revision(i) != madeFor[i]) {
        madeFor[i] = field.builder.revision(i);
        made.set(i, make(i));
      }
      triggers.addAll(made.get(i));
    }
  }

  private List<Trigger> make(int i) {
    List<Trigger> triggers = new ArrayList<>();
    PipeBranch through = field.pipes[i].through().orElseGet(() -> field.builder.through(i));
    fullPipes[i] = new FullPipe(network, state, field, i, through);
    if (state.pipes[i].full) {
      addForFull(i, triggers);
    } else {
      addForBroken(i, 0, triggers);
      addForBroken(i, 1, triggers);
    }
    return triggers;
  }

  // Full pipes.

  private void addForFull(int i, List<Trigger> triggers) {
    Pipe pipe = network.pipes().get(i);
    FullPipe full = fullPipes[i];
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
    double stays = network.places().get(leg.column()).table().volume(belongs(pipe, side));
    double falls = state.volumes[leg.column()] - Math.max(stays, 0);
    if (!held && falls > WORTH_TELLING) {
      story.tell(state.time, What.RUN_EMPTIES, pipe.run(), placeId(pipe, side), falls);
    }
  }

  private String placeId(Pipe pipe, int side) {
    return network.places().get(pipe.leg(side).end().place()).id();
  }

  // Pipes with air at the crest.

  private void addForBroken(int i, int side, List<Trigger> triggers) {
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
    if (atFullTee(pipe, side)) {
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
            () -> standsAtCrest(pipe, side) ? -1 : NEVER,
            () -> mode.legs[side] = PipeMode.Leg.BRIMFUL));
    triggers.add(
        new Trigger(
            pipe.run() + " begins to move",
            () -> wakes(pipe, side, probe),
            () -> mode.legs[side] = PipeMode.Leg.MOVING));
  }

  /** How far a column at rest is from being moved (m³, or m from its crest). */
  private double wakes(Pipe pipe, int side, PipeBranch probe) {
    double far = WAKES - misplaced(pipe, side);
    double needed =
        column(pipe, side) < pipe.crest() - BRIM
            ? Math.min(far, pipe.crest() - belongs(pipe, side))
            : far;
    return needed <= 0 && !wouldFlow(probe) ? NEVER : needed;
  }

  /** Whether a column follows the level at its end, which moves. */
  private boolean isTakenAlong(Pipe pipe, int side) {
    int place = pipe.leg(side).end().place();
    boolean covered =
        network.places().get(place).kind().isPool()
            && field.levels[place] > pipe.leg(side).end().elevation();
    double speed = covered ? field.gains[place] / field.areas[place] : 0;
    return Math.abs(speed) * field.areas[pipe.leg(side).column()] > SLOW;
  }

  /** Water that a column lacks or has too much (m³). */
  private double misplaced(Pipe pipe, int side) {
    LevelTable table = network.places().get(pipe.leg(side).column()).table();
    double there = table.volume(Math.min(belongs(pipe, side), pipe.crest()));
    return Math.abs(there - field.volume(pipe.leg(side).column()));
  }

  /** Whether anything would pass if the column were let go: no valve or check valve holds it. */
  private boolean wouldFlow(PipeBranch probe) {
    probe.solve(field.head(probe.ends[0]), field.head(probe.ends[1]), field.levels);
    return probe.flow != 0;
  }

  /**
   * Lets every column at rest go the last bit to where it belongs, once all else stands still;
   * returns whether any had to.
   */
  boolean wakeColumns() {
    boolean any = false;
    for (int i = 0; i < network.pipes().size(); i++) {
      Pipe pipe = network.pipes().get(i);
      for (int side = 0; side < 2; side++) {
        if (!state.pipes[i].full && state.pipes[i].legs[side] == PipeMode.Leg.AT_REST) {
          if (misplaced(pipe, side) > 2 * THERE && wouldFlow(field.builder.moving(i, side))) {
            state.pipes[i].legs[side] = PipeMode.Leg.MOVING;
            any = true;
          }
        }
      }
    }
    return any;
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
                      ? pipe.crest() - column(pipe, side)
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
              double below = pipe.crest() - column(pipe, side);
              return standsAtCrest(pipe, side) ? below - BRIM : rises(pipe, side) ? below : NEVER;
            },
            () -> mode.legs[side] = PipeMode.Leg.BRIMFUL));
    boolean pumped = side == 0 && field.builder.laws(i).isPumped(0);
    if (!atFullTee(pipe, side) && !pumped) {
      PipeBranch branch = field.pipes[i].legs().get(side).orElseThrow();
      triggers.add(
          new Trigger(
              pipe.run() + " comes to rest",
              () -> {
                if (isFed(i, side) || belongs(pipe, side) >= pipe.crest()) {
                  return Math.abs(branch.flow) > 0 ? NEVER : isFed(i, side) ? NEVER : -1;
                }
                if (isTakenAlong(pipe, side)) {
                  return NEVER;
                }
                double away = misplaced(pipe, side) - THERE;
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
            () -> pipe.crest() - column(pipe, side),
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
    return belongs(pipe, 0) > pipe.crest() && belongs(pipe, 1) > pipe.crest();
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
      double clearing = Siphon.airClearingVelocity(pipe.bore(), Math.PI / 2) * pipe.area();
      triggers.add(
          new Trigger(
              pipe.run() + " begins to fill",
              () -> {
                double slow = (lifted ? fills(branch) : clearing) - branch.flow;
                double shallow = lifted ? -1 : pipe.crest() + pipe.bore() - belongs(pipe, side);
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

  /**
   * Whether a leg is full and the water at its end keeps it so. The head of a full junction says
   * nothing about that: it may be this very leg that lifts it.
   */
  private boolean standsAtCrest(Pipe pipe, int side) {
    return !atFullTee(pipe, side)
        && column(pipe, side) >= pipe.crest() - BRIM
        && belongs(pipe, side) >= pipe.crest();
  }

  private boolean atFullTee(Pipe pipe, int side) {
    PipeEnd end = pipe.leg(side).end();
    return end.atJunction() && state.teeFull[end.junction()];
  }

  private boolean rises(Pipe pipe, int side) {
    return field.gains[pipe.leg(side).column()] > 0;
  }

  /** Where the water in a leg stands (m). */
  private double column(Pipe pipe, int side) {
    return field.levels[pipe.leg(side).column()];
  }

  /** Where the water in a leg would stand if it were free to go there (m). */
  private double belongs(Pipe pipe, int side) {
    PipeEnd end = pipe.leg(side).end();
    if (end.atJunction() && state.teeFull[end.junction()]) {
      return state.teeHeads[end.junction()];
    }
    Place place = network.places().get(end.place());
    return switch (place.kind()) {
      case SUPPLY -> place.head();
      case DRAIN, BEYOND, OUTSIDE -> Math.max(place.head(), end.elevation());
      case VESSEL, BASIN, FLOOR, COLUMN, TEE, DEVICE ->
          Math.max(field.levels[end.place()], end.elevation());
    };
  }
}
