package dryfloor.analysis.simulation;

import dryfloor.analysis.hydraulics.Siphon;
import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.network.Path;
import dryfloor.analysis.network.Pipe;
import dryfloor.analysis.network.PipeEnd;
import dryfloor.analysis.network.PipeFixture.FloatFixture;
import dryfloor.analysis.network.Place;
import java.util.List;
import java.util.Optional;

/** Makes the branches of all pipes for the present modes. */
final class BranchBuilder {

  private final FlowNetwork network;
  private final State state;

  BranchBuilder(FlowNetwork network, State state) {
    this.network = network;
    this.state = state;
  }

  PipeBranches[] build() {
    PipeBranches[] built = new PipeBranches[network.pipes().size()];
    for (int i = 0; i < built.length; i++) {
      built[i] = build(network.pipes().get(i), state.pipes[i]);
    }
    return built;
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

  private PipeBranches build(Pipe pipe, PipeMode mode) {
    if (mode.full) {
      return new PipeBranches(
          Optional.of(through(pipe)), List.of(Optional.empty(), Optional.empty()));
    }
    return new PipeBranches(Optional.empty(), List.of(leg(pipe, mode, 0), leg(pipe, mode, 1)));
  }

  /** The whole pipe as it would carry water if it were full. */
  PipeBranch through(Pipe pipe) {
    return new PipeBranch(
        pipe.throughSlot(),
        1,
        end(pipe, 0),
        end(pipe, 1),
        PipeLaws.whole(pipe, state.board),
        1,
        PipeLaws.floats(pipe.fixtures()),
        suction(pipe),
        crestLimit(pipe));
  }

  private Optional<PipeBranch.CrestLimit> crestLimit(Pipe pipe) {
    double lowestLine = pipe.crest() - Siphon.highestCrest(0, network.water());
    boolean neverSoLow = pipe.legs().stream().allMatch(leg -> leg.end().elevation() > lowestLine);
    return neverSoLow
        ? Optional.empty()
        : Optional.of(
            new PipeBranch.CrestLimit(
                List.of(PipeLaws.leg(pipe, 0, state.board), PipeLaws.leg(pipe, 1, state.board)),
                lowestLine));
  }

  /** The whole pipe as it would carry water from one of its ends if it were full. */
  private PipeBranch from(Pipe pipe, int side) {
    return new PipeBranch(
        pipe.throughSlot(),
        towardsCrest(side),
        end(pipe, side),
        end(pipe, 1 - side),
        PipeLaws.whole(pipe, state.board),
        towardsCrest(side),
        PipeLaws.floats(pipe.fixtures()),
        new PipeBranch.Inlet.Free(),
        Optional.empty());
  }

  private PipeBranch.Inlet suction(Pipe pipe) {
    PipeEnd first = pipe.leg(0).end();
    return PipeLaws.isPumped(pipe, state.board) && opensIntoPool(first)
        ? new PipeBranch.Inlet.Suction(first.place(), first.elevation())
        : new PipeBranch.Inlet.Free();
  }

  private boolean opensIntoPool(PipeEnd end) {
    boolean full = end.atJunction() && state.teeFull[end.junction()];
    return !full && network.places().get(end.place()).kind().isPool();
  }

  private Optional<PipeBranch> leg(Pipe pipe, PipeMode mode, int side) {
    return switch (mode.legs[side]) {
      case AT_REST, FILLING -> Optional.empty();
      case MOVING -> Optional.of(moving(pipe, side));
      case BRIMFUL -> Optional.of(overCrest(pipe, mode, side));
    };
  }

  /** Water between an end and the column on its side; the law runs in the pipe's own direction. */
  PipeBranch moving(Pipe pipe, int side) {
    BranchEnd column = new BranchEnd.AtPlace(pipe.leg(side).column(), Double.NEGATIVE_INFINITY);
    BranchEnd end = end(pipe, side);
    return new PipeBranch(
        pipe.ownColumnSlot(side),
        1,
        end,
        column,
        PipeLaws.leg(pipe, side, state.board),
        towardsCrest(side),
        floats(pipe, side),
        side == 0 && PipeLaws.isPumped(pipe, 0, state.board)
            ? suction(pipe)
            : new PipeBranch.Inlet.Free(),
        Optional.empty());
  }

  /** Water from an end over the crest into the air beyond it. */
  private PipeBranch overCrest(Pipe pipe, PipeMode mode, int side) {
    int far = 1 - side;
    boolean intoColumn =
        mode.legs[far] == PipeMode.Leg.MOVING || mode.legs[far] == PipeMode.Leg.FILLING;
    // Water that goes straight to the far end from the second side counts backwards.
    return new PipeBranch(
        intoColumn ? pipe.farColumnSlot(side) : pipe.throughSlot(),
        intoColumn ? 1 : towardsCrest(side),
        end(pipe, side),
        new BranchEnd.AtHead(pipe.crest()),
        PipeLaws.leg(pipe, side, state.board),
        towardsCrest(side),
        floats(pipe, side),
        inlet(pipe, mode, side),
        Optional.empty());
  }

  /** A leg as it carries water from the crest to its end. */
  PipeBranch fromCrest(Pipe pipe, int side) {
    return new PipeBranch(
        pipe.ownColumnSlot(side),
        -1,
        new BranchEnd.AtHead(pipe.crest()),
        end(pipe, side),
        PipeLaws.leg(pipe, side, state.board),
        -towardsCrest(side),
        floats(pipe, side),
        new PipeBranch.Inlet.Free(),
        Optional.empty());
  }

  /** From the first end the crest lies in the pipe's own direction, from the second against it. */
  private static int towardsCrest(int side) {
    return side == 0 ? 1 : -1;
  }

  private PipeBranch.Inlet inlet(Pipe pipe, PipeMode mode, int side) {
    if (side == 0 && PipeLaws.isPumped(pipe, 0, state.board)) {
      PipeEnd end = pipe.leg(0).end();
      return new PipeBranch.Inlet.OverCrest(opensIntoPool(end) ? end.place() : -1, end.elevation());
    }
    if (network.places().get(pipe.leg(side).end().place()).kind() == Place.Kind.SUPPLY) {
      return new PipeBranch.Inlet.OverCrest(-1, 0);
    }
    Optional<PipeBranch> flushing =
        mode.staysOpen() ? Optional.of(from(pipe, side)) : Optional.empty();
    return new PipeBranch.Inlet.OverLip(end(pipe, side), pipe.crest(), pipe.bore(), flushing);
  }

  private static List<FloatFixture> floats(Pipe pipe, int side) {
    return PipeLaws.floats(PipeLaws.ofLeg(pipe, side));
  }

  /** Where the head at an end of a pipe comes from. */
  BranchEnd end(Pipe pipe, int side) {
    PipeEnd end = pipe.leg(side).end();
    if (end.atJunction() && state.teeFull[end.junction()]) {
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
