package dryfloor.analysis.simulation;

import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.network.Path;
import dryfloor.analysis.network.Pipe;
import dryfloor.analysis.network.PipeEnd;
import dryfloor.analysis.network.PipeLaw;
import dryfloor.analysis.network.Place;
import java.util.List;
import java.util.Optional;

/** Makes the branches of all pipes for the present modes. */
final class BranchBuilder {

  private final FlowNetwork network;
  private final State state;
  private final PipeLaws[] laws;
  private final PipeBranches[] built;
  private final Mode[] modes;
  private final int[] revisions;

  /** All that the branches of a pipe depend on. */
  private record Mode(
      int board,
      boolean full,
      boolean staysOpen,
      PipeMode.Leg first,
      PipeMode.Leg second,
      boolean firstAtFullTee,
      boolean secondAtFullTee) {}

  private static final Mode NOT_YET =
      new Mode(-1, false, false, PipeMode.Leg.AT_REST, PipeMode.Leg.AT_REST, false, false);

  BranchBuilder(FlowNetwork network, State state) {
    this.network = network;
    this.state = state;
    int pipes = network.pipes().size();
    laws = new PipeLaws[pipes];
    built = new PipeBranches[pipes];
    modes = new Mode[pipes];
    revisions = new int[pipes];
    for (int i = 0; i < pipes; i++) {
      laws[i] = new PipeLaws(network.pipes().get(i), state.board);
      built[i] = new PipeBranches(Optional.empty(), List.of());
      modes[i] = NOT_YET;
    }
  }

  PipeLaws laws(int i) {
    return laws[i];
  }

  /** Changes whenever the branches of a pipe are made anew. */
  int revision(int i) {
    return revisions[i];
  }

  /** The branches of all pipes; those whose mode has not changed are the same as before. */
  PipeBranches[] build() {
    for (int i = 0; i < built.length; i++) {
      Mode mode = mode(i);
      if (!mode.equals(modes[i])) {
        modes[i] = mode;
        revisions[i]++;
        built[i] = build(i, state.pipes[i]);
      }
    }
    return built;
  }

  private Mode mode(int i) {
    Pipe pipe = network.pipes().get(i);
    PipeMode mode = state.pipes[i];
    return new Mode(
        state.board.revision(),
        mode.full,
        mode.staysOpen(),
        mode.legs[0],
        mode.legs[1],
        isAtFullTee(pipe, 0),
        isAtFullTee(pipe, 1));
  }

  private boolean isAtFullTee(Pipe pipe, int side) {
    PipeEnd end = pipe.leg(side).end();
    return end.atJunction() && state.teeFull[end.junction()];
  }

  /** Holes of leaking runs whose tee is full. */
  List<Branch> holes() {
    return network.paths().stream()
        .filter(Path.PipeHole.class::isInstance)
        .map(Path.PipeHole.class::cast)
        .filter(hole -> state.teeFull[hole.junction()])
        .map(
            hole ->
                (Branch)
                    new HoleBranch(hole.slot(), hole.junction(), hole.elevation(), hole.area()))
        .toList();
  }

  private PipeBranches build(int i, PipeMode mode) {
    if (mode.full) {
      return new PipeBranches(Optional.of(through(i)), List.of(Optional.empty(), Optional.empty()));
    }
    return new PipeBranches(Optional.empty(), List.of(leg(i, mode, 0), leg(i, mode, 1)));
  }

  /** The whole pipe as it would carry water if it were full. */
  PipeBranch through(int i) {
    Pipe pipe = network.pipes().get(i);
    return new PipeBranch(
        pipe.throughSlot(),
        1,
        end(pipe, 0),
        end(pipe, 1),
        laws[i].whole(),
        1,
        laws[i].floats(),
        suction(i, laws[i].wholeDry()),
        VapourLimit.of(pipe, laws[i], network.water()),
        vents(i));
  }

  /** Holes in the open air beyond a crest that a pump lifts to. */
  private List<PipeBranch.Vent> vents(int i) {
    if (!laws[i].isPumped(0)) {
      return List.of();
    }
    return laws[i].opensBeyondCrest().stream()
        .map(
            hole ->
                new PipeBranch.Vent(
                    laws[i].between(0, hole.along()),
                    laws[i].beyond(hole.along()),
                    hole.elevation()))
        .toList();
  }

  /** The whole pipe as it would carry water from one of its ends if it were full. */
  private PipeBranch from(int i, int side) {
    Pipe pipe = network.pipes().get(i);
    return new PipeBranch(
        pipe.throughSlot(),
        towardsCrest(side),
        end(pipe, side),
        end(pipe, 1 - side),
        laws[i].whole(),
        towardsCrest(side),
        laws[i].floats(),
        new PipeBranch.Inlet.Free(),
        Optional.empty(),
        List.of());
  }

  private PipeBranch.Inlet suction(int i, PipeLaw dry) {
    return laws[i].isPumped() && opensIntoPool(network.pipes().get(i).leg(0).end())
        ? new PipeBranch.Inlet.Suction(pumpAt(i, dry))
        : new PipeBranch.Inlet.Free();
  }

  private PumpSuction pumpAt(int i, PipeLaw dry) {
    Pipe pipe = network.pipes().get(i);
    PipeEnd end = pipe.leg(0).end();
    double bottom = network.places().get(end.place()).table().bottom();
    InletDepths depths =
        end.atJunction()
            ? InletDepths.inBore(network.tees().get(end.junction()).bore())
            : InletDepths.at(end, bottom, pipe.bore());
    return new PumpSuction(end.place(), end.elevation(), depths, dry);
  }

  private boolean opensIntoPool(PipeEnd end) {
    boolean full = end.atJunction() && state.teeFull[end.junction()];
    return !full && network.places().get(end.place()).kind().isPool();
  }

  private Optional<PipeBranch> leg(int i, PipeMode mode, int side) {
    return switch (mode.legs[side]) {
      case AT_REST, FILLING -> Optional.empty();
      case MOVING -> Optional.of(moving(i, side));
      case BRIMFUL -> Optional.of(overCrest(i, mode, side));
    };
  }

  /**
   * Water between an end and the column on its side; the law runs in the pipe's own direction. A
   * pump beyond the crest has air before it and moves nothing.
   */
  PipeBranch moving(int i, int side) {
    Pipe pipe = network.pipes().get(i);
    BranchEnd column = new BranchEnd.AtPlace(pipe.leg(side).column(), Double.NEGATIVE_INFINITY);
    BranchEnd end = end(pipe, side);
    return new PipeBranch(
        pipe.ownColumnSlot(side),
        1,
        end,
        column,
        side == 0 ? laws[i].leg(0) : laws[i].legDry(1),
        towardsCrest(side),
        laws[i].floats(side),
        side == 0 && laws[i].isPumped(0)
            ? suction(i, laws[i].legDry(0))
            : new PipeBranch.Inlet.Free(),
        Optional.empty(),
        List.of());
  }

  /**
   * Water from an end over the crest into the air beyond it. A leg there that is full to the crest
   * and can't carry more stands against it; one that fills does so only once it is full, which ends
   * its filling. A pump on the second side has only that air before it and holds nothing back.
   */
  private PipeBranch overCrest(int i, PipeMode mode, int side) {
    Pipe pipe = network.pipes().get(i);
    int far = 1 - side;
    boolean intoColumn =
        mode.legs[far] == PipeMode.Leg.MOVING || mode.legs[far] == PipeMode.Leg.FILLING;
    // Water that goes straight to the far end from the second side counts backwards.
    return new PipeBranch(
        intoColumn ? pipe.farColumnSlot(side) : pipe.throughSlot(),
        intoColumn ? 1 : towardsCrest(side),
        end(pipe, side),
        mode.legs[far] == PipeMode.Leg.MOVING || mode.legs[far] == PipeMode.Leg.AT_REST
            ? new BranchEnd.AtPlace(pipe.leg(far).column(), pipe.crest())
            : new BranchEnd.AtHead(pipe.crest()),
        side == 0 ? laws[i].leg(0) : laws[i].legDry(1),
        towardsCrest(side),
        laws[i].floats(side),
        inlet(i, mode, side),
        Optional.empty(),
        List.of());
  }

  /** A leg as it carries water from the crest to its end. */
  PipeBranch fromCrest(int i, int side) {
    Pipe pipe = network.pipes().get(i);
    return new PipeBranch(
        pipe.ownColumnSlot(side),
        -1,
        new BranchEnd.AtHead(pipe.crest()),
        end(pipe, side),
        laws[i].leg(side),
        -towardsCrest(side),
        laws[i].floats(side),
        new PipeBranch.Inlet.Free(),
        Optional.empty(),
        List.of());
  }

  /** From the first end the crest lies in the pipe's own direction, from the second against it. */
  private static int towardsCrest(int side) {
    return side == 0 ? 1 : -1;
  }

  private PipeBranch.Inlet inlet(int i, PipeMode mode, int side) {
    Pipe pipe = network.pipes().get(i);
    if (side == 0 && laws[i].isPumped(0)) {
      return new PipeBranch.Inlet.OverCrest(
          opensIntoPool(pipe.leg(0).end())
              ? Optional.of(pumpAt(i, laws[i].legDry(0)))
              : Optional.empty());
    }
    if (network.places().get(pipe.leg(side).end().place()).kind() == Place.Kind.SUPPLY) {
      return new PipeBranch.Inlet.OverCrest(Optional.empty());
    }
    Optional<PipeBranch> flushing =
        mode.staysOpen() ? Optional.of(from(i, side)) : Optional.empty();
    return new PipeBranch.Inlet.OverLip(
        end(pipe, side), pipe.crest(), pipe.bore(), laws[i].freeLip(side), flushing);
  }

  /** Where the head at an end of a pipe comes from. */
  BranchEnd end(Pipe pipe, int side) {
    PipeEnd end = pipe.leg(side).end();
    if (isAtFullTee(pipe, side)) {
      return new BranchEnd.AtTee(end.junction());
    }
    Place place = network.places().get(end.place());
    return switch (place.kind()) {
      case SUPPLY -> new BranchEnd.AtHead(place.head());
      case DRAIN, BEYOND, OUTSIDE -> new BranchEnd.AtHead(Math.max(place.head(), end.elevation()));
      case VESSEL, BASIN, FLOOR, COLUMN, TEE, DEVICE ->
          new BranchEnd.AtPlace(end.place(), end.elevation());
    };
  }
}
