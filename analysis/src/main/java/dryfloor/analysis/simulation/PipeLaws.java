package dryfloor.analysis.simulation;

import dryfloor.analysis.hydraulics.PipeResistance;
import dryfloor.analysis.hydraulics.PumpCurve;
import dryfloor.analysis.hydraulics.ValveLoss;
import dryfloor.analysis.network.Pipe;
import dryfloor.analysis.network.PipeFixture;
import dryfloor.analysis.network.PipeFixture.FloatFixture;
import dryfloor.analysis.network.PipeLaw;
import java.util.ArrayList;
import java.util.List;

/** The law of a pipe, or of a stretch of it, with its parts as they stand at the moment. */
final class PipeLaws {

  /** A powered valve opened less than this is shut. */
  private static final double SHUT = 1e-4;

  /** Even the shortest way through a pipe costs what a union does (velocity heads). */
  private static final double LEAST_LOSS = 0.08;

  private PipeLaws() {}

  /** The whole pipe, from its first end to its second. */
  static PipeLaw whole(Pipe pipe, Board board) {
    return law(pipe, board, 0, pipe.length(), pipe.fixtures());
  }

  /** The leg on one side of the crest, still in the direction of the pipe. */
  static PipeLaw leg(Pipe pipe, int side, Board board) {
    return side == 0
        ? law(pipe, board, 0, pipe.crestAlong(), ofLeg(pipe, 0))
        : law(pipe, board, pipe.crestAlong(), pipe.length(), ofLeg(pipe, 1));
  }

  /** The stretch from some distance (m) to the second end. */
  static PipeLaw beyond(Pipe pipe, Board board, double from) {
    List<PipeFixture> fixtures =
        pipe.fixtures().stream().filter(fixture -> fixture.along() >= from).toList();
    return law(pipe, board, from, pipe.length(), fixtures);
  }

  private static PipeLaw law(
      Pipe pipe, Board board, double from, double to, List<PipeFixture> fixtures) {
    double length = to - from;
    boolean firstEnd = from <= 0;
    boolean secondEnd = to >= pipe.length();
    double loss = pipe.spreadLoss() * (pipe.length() > 0 ? length / pipe.length() : 1);
    loss += firstEnd ? pipe.leg(0).endLoss() : 0;
    loss += secondEnd ? pipe.leg(1).endLoss() : 0;
    List<PumpCurve> pumps = new ArrayList<>();
    PipeLaw.Passage passage = PipeLaw.Passage.BOTH_WAYS;
    double cracking = 0;
    double leak = Double.POSITIVE_INFINITY;
    for (PipeFixture fixture : fixtures) {
      switch (fixture) {
        case PipeFixture.PumpFixture pump -> {
          if (board.runs(pump.part())) {
            pumps.add(pump.curve());
          } else if (Double.isInfinite(pump.stoppedLoss())) {
            passage = PipeLaw.Passage.BLOCKED;
          } else {
            loss += pump.stoppedLoss();
          }
        }
        case PipeFixture.PoweredValveFixture valve -> {
          double opening = board.opening(valve.part());
          if (opening < SHUT) {
            passage = PipeLaw.Passage.BLOCKED;
          } else {
            loss += ValveLoss.fittingsOf(ValveLoss.kvAtOpening(valve.kv(), opening), pipe.bore());
          }
        }
        case PipeFixture.FixedFixture fixed -> loss += fixed.loss();
        case PipeFixture.BlockedFixture blocked -> passage = PipeLaw.Passage.BLOCKED;
        case PipeFixture.CheckFixture check -> {
          if (passage == PipeLaw.Passage.BOTH_WAYS) {
            passage = PipeLaw.Passage.FORWARD_ONLY;
          }
          loss += check.loss();
          cracking += check.crackingHead();
          leak = Math.min(leak, check.leakArea());
        }
        case FloatFixture floatValve -> {}
        case PipeFixture.HoleFixture hole -> {}
      }
    }
    return new PipeLaw(
        PipeResistance.of(pipe.bore(), length, pipe.roughness(), pipe.viscosity()),
        Math.max(loss, LEAST_LOSS),
        pumps,
        firstEnd ? pipe.supplyHead() : 0,
        pipe.supplyFlow(),
        passage,
        cracking,
        passage == PipeLaw.Passage.FORWARD_ONLY ? leak : 0);
  }

  /** Float valves among fixtures. */
  static List<FloatFixture> floats(List<PipeFixture> fixtures) {
    return fixtures.stream()
        .filter(FloatFixture.class::isInstance)
        .map(FloatFixture.class::cast)
        .toList();
  }

  /**
   * The fixtures of the leg on one side. What sits at the very first end belongs to the first leg
   * even where the crest is there too: a blocked lip lets nothing over.
   */
  static List<PipeFixture> ofLeg(Pipe pipe, int side) {
    boolean crestAtSecondEnd = pipe.crestAlong() >= pipe.length();
    return pipe.fixtures().stream()
        .filter(
            fixture -> {
              boolean first =
                  fixture.along() <= 0 || fixture.along() < pipe.crestAlong() || crestAtSecondEnd;
              return first == (side == 0);
            })
        .toList();
  }

  /** Whether a pump runs in the pipe. */
  static boolean isPumped(Pipe pipe, Board board) {
    return pipe.fixtures().stream()
        .anyMatch(f -> f instanceof PipeFixture.PumpFixture pump && board.runs(pump.part()));
  }

  /** Whether a pump runs in the leg on one side. */
  static boolean isPumped(Pipe pipe, int side, Board board) {
    return ofLeg(pipe, side).stream()
        .anyMatch(f -> f instanceof PipeFixture.PumpFixture pump && board.runs(pump.part()));
  }
}
