package dryfloor.analysis.simulation;

import dryfloor.analysis.hydraulics.PipeResistance;
import dryfloor.analysis.hydraulics.PressureLine;
import dryfloor.analysis.hydraulics.PumpCurve;
import dryfloor.analysis.hydraulics.ValveLoss;
import dryfloor.analysis.network.Pipe;
import dryfloor.analysis.network.PipeFixture;
import dryfloor.analysis.network.PipeFixture.FloatFixture;
import dryfloor.analysis.network.PipeLaw;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The laws of one pipe and of stretches of it, with its parts as they stand at the moment. They are
 * kept until a part starts, stops or moves.
 */
final class PipeLaws {

  /** A powered valve opened less than this is shut. */
  private static final double SHUT = 1e-4;

  /** Even the shortest way through a pipe costs what a union does (velocity heads). */
  private static final double LEAST_LOSS = 0.08;

  private final Pipe pipe;
  private final Board board;
  private final List<List<PipeFixture>> fixturesOfLegs;
  private final List<FloatFixture> floats;
  private final List<List<FloatFixture>> floatsOfLegs;

  /** What was made since the last change of a part, by where the stretch begins and ends (m). */
  private final Map<Stretch, PipeLaw> known = new HashMap<>();

  private int revision = -1;

  /** What a law is asked for. */
  private enum Purpose {
    /** What flows between its ends. */
    FLOW,
    /** It is part of a stretch that carries and adds up to it with the others. */
    PART,
    /** What flows between its ends with air in its pumps. */
    FLOW_WITH_DRY_PUMPS,
    /** The pressure within, so that what is lost at the very ends does not belong to it. */
    PRESSURE
  }

  private record Stretch(double from, double to, int fixtures, Purpose purpose) {}

  PipeLaws(Pipe pipe, Board board) {
    this.pipe = pipe;
    this.board = board;
    fixturesOfLegs = List.of(ofLeg(0), ofLeg(1));
    floats = floats(pipe.fixtures());
    floatsOfLegs = fixturesOfLegs.stream().map(PipeLaws::floats).toList();
  }

  /** The whole pipe, from its first end to its second. */
  PipeLaw whole() {
    return law(0, pipe.length(), pipe.fixtures(), Purpose.FLOW);
  }

  /** The whole pipe as it lets water fall back through pumps that have only air. */
  PipeLaw wholeDry() {
    return law(0, pipe.length(), pipe.fixtures(), Purpose.FLOW_WITH_DRY_PUMPS);
  }

  /** The leg on one side of the crest, still in the direction of the pipe. */
  PipeLaw leg(int side) {
    return leg(side, Purpose.FLOW);
  }

  /** The same with air in its pumps. */
  PipeLaw legDry(int side) {
    return leg(side, Purpose.FLOW_WITH_DRY_PUMPS);
  }

  private PipeLaw leg(int side, Purpose purpose) {
    return side == 0
        ? law(0, pipe.crestAlong(), fixturesOfLegs.get(0), purpose)
        : law(pipe.crestAlong(), pipe.length(), fixturesOfLegs.get(1), purpose);
  }

  /**
   * The inside of a stretch (m along the pipe, both ends included), for the pressure line: without
   * what is lost where water enters the pipe or leaves it.
   */
  PipeLaw inside(double from, double to) {
    return law(
        from,
        to,
        pipe.fixtures().stream()
            .filter(fixture -> fixture.along() >= from && fixture.along() <= to)
            .toList(),
        Purpose.PRESSURE);
  }

  /** Float valves of a stretch (m along the pipe). */
  List<FloatFixture> floats(double from, double to) {
    return floats.stream()
        .filter(fixture -> fixture.along() >= from && fixture.along() <= to)
        .toList();
  }

  /**
   * How far the pressure line lies below the head at an end by which water enters, just inside
   * (velocity heads).
   */
  double belowHeadOnEntering(int side) {
    return pipe.leg(side).end().atJunction()
        ? PressureLine.belowEnergyLine()
        : PressureLine.belowStillWater(pipe.entranceLoss());
  }

  /** How far the pressure line lies above the head at an end by which water leaves, just inside. */
  double aboveHeadOnLeaving(int side) {
    return pipe.leg(side).end().atJunction()
        ? -PressureLine.belowEnergyLine()
        : PressureLine.AT_OUTLET;
  }

  /**
   * Share of the lip that is free where water goes over the crest from this side. Dirt covers the
   * lip only where the mouth it lies on is the lip; under water it costs head instead.
   */
  double freeLip(int side) {
    if (side == 1 || !pipe.leg(0).negligible()) {
      return 1;
    }
    double free = 1;
    for (PipeFixture fixture : pipe.fixtures()) {
      if (fixture instanceof PipeFixture.NarrowedFixture narrowed) {
        free = Math.min(free, narrowed.free());
      }
    }
    return free;
  }

  /** The stretch from some distance (m) to the second end. */
  PipeLaw beyond(double from) {
    return between(from, Double.POSITIVE_INFINITY);
  }

  /** The stretch between two distances (m) from the first end, or what of it the pipe has. */
  PipeLaw between(double from, double to) {
    return law(
        from,
        Math.min(to, pipe.length()),
        pipe.fixtures().stream()
            .filter(fixture -> fixture.along() >= from && fixture.along() < to)
            .toList(),
        Purpose.PART);
  }

  /** Holes beyond the crest that no water ever covers. */
  List<PipeFixture.HoleFixture> opensBeyondCrest() {
    return pipe.fixtures().stream()
        .filter(PipeFixture.HoleFixture.class::isInstance)
        .map(PipeFixture.HoleFixture.class::cast)
        .filter(hole -> hole.coveredBy() < 0 && hole.along() > pipe.crestAlong())
        .toList();
  }

  /** Float valves of the pipe. */
  List<FloatFixture> floats() {
    return floats;
  }

  /** Float valves of the leg on one side. */
  List<FloatFixture> floats(int side) {
    return floatsOfLegs.get(side);
  }

  /** Whether a pump runs in the pipe. */
  boolean isPumped() {
    return isPumped(pipe.fixtures());
  }

  /** Whether a pump runs in the leg on one side. */
  boolean isPumped(int side) {
    return isPumped(fixturesOfLegs.get(side));
  }

  private boolean isPumped(List<PipeFixture> fixtures) {
    for (PipeFixture fixture : fixtures) {
      if (fixture instanceof PipeFixture.PumpFixture pump && board.runs(pump.part())) {
        return true;
      }
    }
    return false;
  }

  private PipeLaw law(double from, double to, List<PipeFixture> fixtures, Purpose purpose) {
    if (revision != board.revision()) {
      known.clear();
      revision = board.revision();
    }
    return known.computeIfAbsent(
        new Stretch(from, to, fixtures.size(), purpose),
        stretch -> make(from, to, fixtures, purpose));
  }

  private PipeLaw make(double from, double to, List<PipeFixture> fixtures, Purpose purpose) {
    double length = to - from;
    boolean firstEnd = from <= 0;
    boolean withEnds = purpose != Purpose.PRESSURE;
    boolean isWholeWay = withEnds && purpose != Purpose.PART;
    double loss = pipe.spreadLoss() * (pipe.length() > 0 ? length / pipe.length() : 1);
    loss += withEnds && firstEnd ? pipe.leg(0).endLoss() : 0;
    loss += withEnds && to >= pipe.length() ? pipe.leg(1).endLoss() : 0;
    List<PumpCurve> pumps = new ArrayList<>();
    PipeLaw.Passage passage = PipeLaw.Passage.BOTH_WAYS;
    double cracking = 0;
    double leak = Double.POSITIVE_INFINITY;
    for (PipeFixture fixture : fixtures) {
      switch (fixture) {
        case PipeFixture.PumpFixture pump -> {
          if (board.runs(pump.part()) && purpose != Purpose.FLOW_WITH_DRY_PUMPS) {
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
        case PipeFixture.NarrowedFixture narrowed -> loss += narrowed.loss();
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
        isWholeWay ? Math.max(loss, LEAST_LOSS) : loss,
        pumps,
        firstEnd ? pipe.supplyHead() : 0,
        pipe.supplyFlow(),
        passage,
        cracking,
        passage == PipeLaw.Passage.FORWARD_ONLY ? leak : 0);
  }

  private static List<FloatFixture> floats(List<PipeFixture> fixtures) {
    return fixtures.stream()
        .filter(FloatFixture.class::isInstance)
        .map(FloatFixture.class::cast)
        .toList();
  }

  /**
   * The fixtures of the leg on one side. What sits at the very first end belongs to the first leg
   * even where the crest is there too: a blocked lip lets nothing over.
   */
  private List<PipeFixture> ofLeg(int side) {
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
}
