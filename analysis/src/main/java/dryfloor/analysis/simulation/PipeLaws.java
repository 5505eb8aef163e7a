package dryfloor.analysis.simulation;

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

  private PipeLaws() {}

  /** The whole pipe, from its first end to its second. */
  static PipeLaw whole(Pipe pipe, Board board) {
    return stretch(pipe, board, 0, pipe.length());
  }

  /** The leg on one side of the crest, still in the direction of the pipe. */
  static PipeLaw leg(Pipe pipe, int side, Board board) {
    return side == 0
        ? stretch(pipe, board, 0, pipe.crestAlong())
        : stretch(pipe, board, pipe.crestAlong(), pipe.length());
  }

  /** The stretch between two distances from the first end (m). */
  static PipeLaw stretch(Pipe pipe, Board board, double from, double to) {
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
    for (PipeFixture fixture : within(pipe, from, to)) {
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
        pipe.bore(),
        length,
        pipe.roughness(),
        loss,
        pipe.viscosity(),
        pumps,
        firstEnd ? pipe.supplyHead() : 0,
        pipe.supplyFlow(),
        passage,
        cracking,
        passage == PipeLaw.Passage.FORWARD_ONLY ? leak : 0);
  }

  /** Float valves in a stretch. */
  static List<FloatFixture> floats(Pipe pipe, double from, double to) {
    return within(pipe, from, to).stream()
        .filter(FloatFixture.class::isInstance)
        .map(FloatFixture.class::cast)
        .toList();
  }

  private static List<PipeFixture> within(Pipe pipe, double from, double to) {
    if (from >= to) {
      return List.of();
    }
    boolean last = to >= pipe.length();
    return pipe.fixtures().stream()
        .filter(f -> Math.clamp(f.along(), 0, pipe.length()) >= from)
        .filter(f -> last || Math.clamp(f.along(), 0, pipe.length()) < to)
        .toList();
  }

  /** Whether a pump runs in the pipe. */
  static boolean isPumped(Pipe pipe, Board board) {
    return pipe.fixtures().stream()
        .anyMatch(f -> f instanceof PipeFixture.PumpFixture pump && board.runs(pump.part()));
  }

  /** Whether a pump runs in the leg on one side. */
  static boolean isPumped(Pipe pipe, int side, Board board) {
    double from = side == 0 ? 0 : pipe.crestAlong();
    double to = side == 0 ? pipe.crestAlong() : pipe.length();
    return within(pipe, from, to).stream()
        .anyMatch(f -> f instanceof PipeFixture.PumpFixture pump && board.runs(pump.part()));
  }
}
