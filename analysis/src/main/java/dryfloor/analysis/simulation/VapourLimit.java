package dryfloor.analysis.simulation;

import dryfloor.analysis.hydraulics.Siphon;
import dryfloor.analysis.hydraulics.Water;
import dryfloor.analysis.network.FlowPoint;
import dryfloor.analysis.network.Pipe;
import dryfloor.analysis.network.PipeFixture;
import dryfloor.analysis.network.PipeFixture.FloatFixture;
import dryfloor.analysis.network.PipeLaw;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a full pipe carries at most where the pressure falls to that of vapour: at its crest, at a
 * bend before a long fall, or behind a valve. Beyond that point the water then falls in a broken
 * column, so only what lies before it counts.
 */
final class VapourLimit {

  /**
   * A point of the pipe at which the pressure may fall that low.
   *
   * @param along where it is in the pipe (m)
   * @param elevation of the pipe there (m)
   * @param stretches from the first end to the point, and from the point to the second end
   * @param floats valves in each
   * @param lowestLine lowest that the pressure line can fall to there (m)
   */
  private record Point(
      double along,
      double elevation,
      List<PipeLaw> stretches,
      List<List<FloatFixture>> floats,
      double lowestLine) {}

  private final Pipe pipe;
  private final List<Double> entering;
  private final List<Point> points = new ArrayList<>();

  /** The point that limited the flow last. */
  private int limiting = -1;

  private VapourLimit(Pipe pipe, PipeLaws laws, Water water) {
    this.pipe = pipe;
    entering = List.of(laws.belowHeadOnEntering(0), laws.belowHeadOnEntering(1));
    double hangs = Siphon.highestCrest(0, water);
    for (Pipe.Bend bend : pipe.bends()) {
      add(laws, bend.along(), bend.elevation(), hangs);
    }
    for (PipeFixture fixture : pipe.fixtures()) {
      if (!(fixture instanceof PipeFixture.HoleFixture)) {
        add(laws, fixture.along(), pipe.elevationAt(fixture.along()), hangs);
      }
    }
  }

  private void add(PipeLaws laws, double along, double elevation, double hangs) {
    double lowestLine = elevation - hangs;
    boolean neverSoLow = pipe.legs().stream().allMatch(leg -> leg.end().elevation() > lowestLine);
    if (!neverSoLow) {
      points.add(
          new Point(
              along,
              elevation,
              List.of(laws.inside(0, along), laws.inside(along, pipe.length())),
              List.of(laws.floats(0, along), laws.floats(along, pipe.length())),
              lowestLine));
    }
  }

  /** The limit of a pipe, where it has one. */
  static Optional<VapourLimit> of(Pipe pipe, PipeLaws laws, Water water) {
    VapourLimit limit = new VapourLimit(pipe, laws, water);
    return limit.points.isEmpty() ? Optional.empty() : Optional.of(limit);
  }

  /**
   * The most that passes in the direction of a flow (m³/s, negative where not even still water
   * hangs together), if that is less than the flow.
   */
  OptionalDouble most(double flow, double firstHead, double secondHead, double[] levels) {
    limiting = -1;
    int side = flow >= 0 ? 0 : 1;
    double sign = flow >= 0 ? 1 : -1;
    double least = Math.abs(flow);
    for (int p = 0; p < points.size(); p++) {
      Point point = points.get(p);
      PipeLaw before = point.stretches().get(side);
      double drop = (flow >= 0 ? firstHead : secondHead) - point.lowestLine();
      double loss =
          entering.get(side)
              + PipeBranch.movingLoss(point.floats().get(side), pipe.bore(), levels, 0);
      if (sign * before.headFor(sign * least, loss) > drop) {
        FlowPoint most = new FlowPoint();
        before.solve(sign * drop, loss, most);
        least = Math.min(least, sign * most.flow);
        limiting = p;
      }
    }
    return limiting < 0 ? OptionalDouble.empty() : OptionalDouble.of(least);
  }

  /** Where along the pipe it limited the flow last (m), if it did. */
  Optional<Pipe.Bend> limitingPoint() {
    return limiting < 0
        ? Optional.empty()
        : Optional.of(
            new Pipe.Bend(points.get(limiting).along(), points.get(limiting).elevation()));
  }
}
