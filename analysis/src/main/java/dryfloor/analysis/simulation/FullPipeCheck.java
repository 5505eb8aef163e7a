package dryfloor.analysis.simulation;

import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.network.Pipe;
import dryfloor.analysis.network.PipeEnd;
import dryfloor.analysis.network.PipeFixture.HoleFixture;
import dryfloor.analysis.network.Place;
import java.util.List;

/**
 * Whether a pipe that is full of water, or would be, stays so. Gauges are above zero while it does.
 */
final class FullPipeCheck {

  /** Flows smaller than this do not count as sucking (m³/s). */
  private static final double NOTHING = 1e-10;

  private static final double NEVER = 10;

  private final FlowNetwork network;
  private final State state;
  private final FlowField field;
  private final BranchBuilder builder;

  FullPipeCheck(FlowNetwork network, State state, FlowField field) {
    this.network = network;
    this.state = state;
    this.field = field;
    this.builder = new BranchBuilder(network, state);
  }

  /**
   * Whether a pipe that has taken air would stay full if it filled again: the opening that let the
   * air in must have been sealed, a hole by its own diameter of water and an end by half its bore,
   * or the water would part again at once.
   *
   * @param overCrest flow that passes its crest now, in the direction of the pipe (m³/s); at a full
   *     junction, whose head will follow, that is what it goes on with
   */
  boolean wouldStayFullAgain(Pipe pipe, double overCrest) {
    PipeBranch through = solved(pipe);
    return staysFull(pipe, through, touchesFullTee(pipe) ? overCrest : through.driven, true);
  }

  /** Whether the pipe stays full if it is full now. */
  boolean wouldStayFull(Pipe pipe) {
    PipeBranch through = solved(pipe);
    return staysFull(pipe, through, through.driven, false);
  }

  private PipeBranch solved(Pipe pipe) {
    PipeBranch through = builder.through(pipe);
    through.solve(field.head(through.ends[0]), field.head(through.ends[1]), field.levels);
    return through;
  }

  private boolean staysFull(Pipe pipe, PipeBranch through, double flow, boolean sealed) {
    double end = sealed ? pipe.bore() / 2 : 0;
    double movingLoss = through.movingLoss(field.levels, 0);
    return cover(pipe, 0, flow) > end
        && cover(pipe, 1, flow) > end
        && crestHolds(pipe, through) > 0
        && holes(pipe).stream()
            .allMatch(
                hole -> holePressure(pipe, hole, flow, movingLoss, sealed ? hole.seal() : 0) > 0);
  }

  private boolean touchesFullTee(Pipe pipe) {
    return pipe.legs().stream()
        .map(Pipe.Leg::end)
        .anyMatch(end -> end.atJunction() && state.teeFull[end.junction()]);
  }

  /** Flow (m³/s) that the pipe would carry if it were full now. */
  double flowIfFull(Pipe pipe) {
    return solved(pipe).flow;
  }

  /**
   * Water over an end that would suck (m); never a worry where none would, or where a pump sucks.
   */
  double cover(Pipe pipe, int side, double flow) {
    double entering = side == 0 ? flow : -flow;
    PipeEnd end = pipe.leg(side).end();
    if (entering <= NOTHING || (end.atJunction() && state.teeFull[end.junction()])) {
      return NEVER;
    }
    if (side == 0 && PipeLaws.isPumped(pipe, state.board)) {
      return NEVER;
    }
    Place place = network.places().get(end.place());
    return switch (place.kind()) {
      case SUPPLY -> NEVER;
      case DRAIN, BEYOND, OUTSIDE -> place.head() - end.elevation();
      case VESSEL, BASIN, FLOOR, COLUMN, TEE, DEVICE -> field.levels[end.place()] - end.elevation();
    };
  }

  List<HoleFixture> holes(Pipe pipe) {
    return pipe.fixtures().stream()
        .filter(HoleFixture.class::isInstance)
        .map(HoleFixture.class::cast)
        .toList();
  }

  /**
   * The better of the water over a hole and the pressure behind it (m): air enters when both have
   * fallen to nothing.
   *
   * @param seal water over the hole that it takes to keep air out (m)
   */
  double holePressure(Pipe pipe, HoleFixture hole, double flow, double movingLoss, double seal) {
    double cover =
        hole.coveredBy() >= 0
            ? field.levels[hole.coveredBy()] - hole.elevation() - seal
            : Double.NEGATIVE_INFINITY;
    if (cover > 0) {
      return cover;
    }
    double head =
        field.head(builder.end(pipe, 1))
            + PipeLaws.beyond(pipe, state.board, hole.along()).headFor(flow, movingLoss);
    return head - hole.elevation();
  }

  /**
   * Whether the column holds at the crest: a vented crest while the pressure line runs above it
   * (m), any other while the pressure of the air can lift water over it (m³/s).
   */
  double crestHolds(Pipe pipe, PipeBranch through) {
    if (pipe.vented()) {
      double line =
          field.head(builder.end(pipe, 1))
              + PipeLaws.beyond(pipe, state.board, pipe.crestAlong()).headFor(through.driven, 0);
      return line - pipe.crest();
    }
    boolean limits = through.crestFlow < Math.abs(through.driven);
    return limits ? through.crestFlow : NEVER;
  }

  /** The leg on one side as its column would move in it. */
  PipeBranch ownLeg(Pipe pipe, int side) {
    return builder.moving(pipe, side);
  }

  /** The leg beyond the crest as it would carry water from there to its end. */
  PipeBranch farLeg(Pipe pipe, int side) {
    return builder.fromCrest(pipe, side);
  }

  /** Flow (m³/s) that a leg beyond the crest carries away at most without filling. */
  double capacity(PipeBranch beyond, Pipe pipe) {
    beyond.solve(pipe.crest(), field.head(beyond.ends[1]), field.levels);
    return Math.max(beyond.flow, 0);
  }
}
