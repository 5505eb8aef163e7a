package dryfloor.analysis.simulation;

import dryfloor.analysis.hydraulics.Lip;
import dryfloor.analysis.hydraulics.ValveLoss;
import dryfloor.analysis.network.FlowPoint;
import dryfloor.analysis.network.Pipe;
import dryfloor.analysis.network.PipeFixture.FloatFixture;
import dryfloor.analysis.network.PipeLaw;
import java.util.List;
import java.util.Optional;

/** Water through a pipe, or through one leg of it. */
final class PipeBranch extends Branch {

  /** A float valve opened less than this passes nothing. */
  private static final double SHUT = 1e-6;

  /** Depth beyond that at which a flushing lip fills, over which it comes to run full (m). */
  private static final double FLUSH_DEPTH = 0.005;

  /** Water that moves no faster than this through a pump without water stays (m³/s). */
  private static final double RUNS_ON = 1e-10;

  /** Step of level for the slope of a float valve's flow (m). */
  private static final double NUDGE = 1e-6;

  final PipeLaw law;

  /** 1 where the branch runs in the pipe's own direction, -1 where it runs against it. */
  private final int direction;

  private final List<FloatFixture> floats;
  private final Inlet inlet;
  private final Optional<VapourLimit> vapour;
  private final List<Vent> vents;

  /** What was solved for last, to start from and to use again (m, velocity heads). */
  private double solvedHead;

  private double solvedLoss = Double.NaN;

  private final FlowPoint point = new FlowPoint();
  private final FlowPoint nudged = new FlowPoint();
  private final FlowPoint falling = new FlowPoint();
  private final FlowPoint following = new FlowPoint();
  private final FlowPoint vented = new FlowPoint();

  /** Flow that would pass if the inlet let it, negative where the branch lets none back (m³/s). */
  double driven;

  /** Most that passes before water turns to vapour somewhere, or infinite (m³/s). */
  double vapourFlow = Double.POSITIVE_INFINITY;

  /**
   * A hole behind which the pressure never falls below that outside: it takes air instead, and the
   * pipe runs full up to it as if it ended there.
   *
   * @param before the pipe up to the hole
   * @param beyond the pipe from there to the second end
   * @param elevation of the hole (m)
   */
  record Vent(PipeLaw before, PipeLaw beyond, double elevation) {}

  /** What happens where water enters at the first end. */
  sealed interface Inlet {

    /** It enters freely. */
    record Free() implements Inlet {}

    /** A pump sucks there. */
    record Suction(PumpSuction pump) implements Inlet {}

    /**
     * It goes over a lip into air; nothing comes back.
     *
     * @param free share of the lip that no dirt covers
     * @param flushing the whole pipe as if it were full, where it fills and breaks again and again:
     *     on average it then passes what arrives, with the lip as deep as it takes to fill
     */
    record OverLip(
        BranchEnd from, double crest, double bore, double free, Optional<PipeBranch> flushing)
        implements Inlet {}

    /**
     * A pump or a supply lifts it over a crest into air; nothing comes back.
     *
     * @param pump one that sucks from open water
     */
    record OverCrest(Optional<PumpSuction> pump) implements Inlet {}
  }

  PipeBranch(
      int slot,
      int sign,
      BranchEnd first,
      BranchEnd second,
      PipeLaw law,
      int direction,
      List<FloatFixture> floats,
      Inlet inlet,
      Optional<VapourLimit> vapour,
      List<Vent> vents) {
    super(slot, sign, first, second);
    this.vapour = vapour;
    this.vents = vents;
    this.law = law;
    this.direction = direction;
    this.floats = floats;
    this.inlet = inlet;
    this.actingPlace = actingPlace(inlet, floats);
  }

  private static int actingPlace(Inlet inlet, List<FloatFixture> floats) {
    if (!floats.isEmpty()) {
      return floats.getFirst().place();
    }
    return switch (inlet) {
      case Inlet.Free free -> -1;
      case Inlet.Suction suction -> suction.pump().place();
      case Inlet.OverLip lip -> lip.from() instanceof BranchEnd.AtPlace from ? from.place() : -1;
      case Inlet.OverCrest crest -> crest.pump().map(PumpSuction::place).orElse(-1);
    };
  }

  @Override
  void solve(double firstHead, double secondHead, double[] levels) {
    double head = firstHead - secondHead;
    double loss = movingLoss(levels, 0);
    flowPerLevel = 0;
    if (head != solvedHead || loss != solvedLoss) {
      point.flow += point.flowPerHead * (direction * (head - solvedHead));
      solve(head, loss, isShut(levels), point);
      solvedHead = head;
      solvedLoss = loss;
    }
    driven = direction * point.flow;
    if (!floats.isEmpty()) {
      nudged.flow = point.flow;
      nudged.flowPerHead = point.flowPerHead;
      solve(head, movingLoss(levels, NUDGE), isShut(levels), nudged);
      flowPerLevel = (direction * nudged.flow - driven) / NUDGE;
    }
    flow = driven;
    flowPerHead = point.flowPerHead;
    vapour.ifPresent(limit -> hangTogether(limit, firstHead, secondHead, levels));
    for (int i = 0; i < vents.size(); i++) {
      passVent(vents.get(i), firstHead, secondHead, loss);
    }
    switch (inlet) {
      case Inlet.Free free -> {}
      case Inlet.Suction suction -> {
        suck(suction.pump(), levels);
        if (suction.pump().fallsBack(levels) > 0) {
          fallBack(suction.pump(), head, loss, levels);
          vapour.ifPresent(limit -> hangTogether(limit, firstHead, secondHead, levels));
        }
      }
      case Inlet.OverCrest crest -> {
        if (flow <= 0) {
          stop();
        } else {
          crest.pump().ifPresent(pump -> suckOverCrest(pump, head, loss, levels));
        }
      }
      case Inlet.OverLip lip -> {
        goOver(lip, firstHead);
        lip.flushing().ifPresent(full -> flush(full, lip, firstHead, levels));
      }
    }
  }

  private void hangTogether(
      VapourLimit limit, double firstHead, double secondHead, double[] levels) {
    vapourFlow = limit.most(flow, firstHead, secondHead, levels).orElse(Double.POSITIVE_INFINITY);
    if (vapourFlow < Math.abs(flow)) {
      flow = Math.copySign(Math.max(vapourFlow, 0), flow);
      flowPerHead = 0;
    }
  }

  /**
   * Water left over an opening at which a pump sucks before only air follows (m): infinite where
   * none sucks, and where what is in the pipe would not run on by itself with air at the opening.
   */
  double leftBeforeAirFollows(double secondHead, double[] levels) {
    if (!(inlet instanceof Inlet.Suction suction)) {
      return Double.POSITIVE_INFINITY;
    }
    double left = suction.pump().left(levels);
    if (left > 0) {
      return left;
    }
    if (isShut(levels)) {
      return Double.POSITIVE_INFINITY;
    }
    double head = direction * (suction.pump().elevation() - secondHead);
    suction.pump().dry().solve(head, movingLoss(levels, 0), following);
    return direction * following.flow > RUNS_ON ? left : Double.POSITIVE_INFINITY;
  }

  /** Where in the pipe the pressure has fallen to that of vapour, if it has. */
  Optional<Pipe.Bend> vapourPoint() {
    return vapour.flatMap(VapourLimit::limitingPoint);
  }

  /** Float valves sit at the end of their pipe, beyond any hole. */
  private void passVent(Vent vent, double firstHead, double secondHead, double loss) {
    if (flow <= 0 || secondHead + vent.beyond().headFor(flow, loss) >= vent.elevation()) {
      return;
    }
    vent.before().solve(firstHead - vent.elevation(), 0, vented);
    if (vented.flow < flow) {
      flow = Math.max(vented.flow, 0);
      driven = flow;
      flowPerHead = vented.flow > 0 ? vented.flowPerHead : 0;
      flowPerLevel = 0;
    }
  }

  private void suck(PumpSuction pump, double[] levels) {
    if (flow > 0) {
      double share = pump.share(levels);
      flowPerLevel = flowPerLevel * share + flow * pump.sharePerDepth(levels);
      flow *= share;
      flowPerHead *= share;
    }
  }

  /** Nothing comes back over the crest: where the pump has only air, the water stands below it. */
  private void suckOverCrest(PumpSuction pump, double head, double loss, double[] levels) {
    suck(pump, levels);
    if (pump.fallsBack(levels) > 0) {
      fallBack(pump, head, loss, levels);
      stop();
    }
  }

  /** Without water the pump has no head: what stands above it falls back, and none comes after. */
  private void fallBack(PumpSuction pump, double head, double loss, double[] levels) {
    if (isShut(levels)) {
      driven = 0;
    } else {
      pump.dry().solve(direction * head, loss, falling);
      driven = direction * falling.flow;
    }
    double held = Math.min(flow, 0);
    double heldSlope = flow < 0 ? flowPerHead : 0;
    double fallen = Math.min(driven, 0);
    double fallenSlope = driven < 0 ? falling.flowPerHead : 0;
    double share = pump.fallsBack(levels);
    flow = held + share * (fallen - held);
    flowPerHead = heldSlope + share * (fallenSlope - heldSlope);
    flowPerLevel = pump.fallsBackPerDepth(levels) * (fallen - held);
  }

  private void goOver(Inlet.OverLip lip, double firstHead) {
    double depth = firstHead - lip.crest();
    if (flow <= 0 || depth <= 0) {
      stop();
      return;
    }
    double most = Lip.flow(depth, lip.bore(), lip.free());
    if (flow > most) {
      flow = most;
      flowPerHead = 0;
      if (lip.from() instanceof BranchEnd.AtPlace) {
        flowPerLevel = Lip.flowPerHead(depth, lip.bore(), lip.free());
      } else {
        flowPerHead = Lip.flowPerHead(depth, lip.bore(), lip.free());
      }
    }
  }

  /** Over the lip up to where it fills, then quickly up to what the full pipe carries. */
  private void flush(PipeBranch full, Inlet.OverLip lip, double firstHead, double[] levels) {
    double farHead =
        switch (full.ends[1]) {
          case BranchEnd.AtPlace at -> Math.max(levels[at.place()], at.elevation());
          case BranchEnd.AtHead at -> at.head();
          case BranchEnd.AtTee at -> Double.NaN;
        };
    double over = firstHead - lip.crest() - lip.bore();
    if (Double.isNaN(farHead)) {
      return;
    }
    full.solve(firstHead, farHead, levels);
    double most = Math.max(full.flow, 0);
    if (over > 0 && most > flow) {
      double share = Math.min(over / FLUSH_DEPTH, 1);
      double slope = over < FLUSH_DEPTH ? (most - flow) / FLUSH_DEPTH : 0;
      flow += share * (most - flow);
      flowPerLevel = lip.from() instanceof BranchEnd.AtPlace ? slope : 0;
      flowPerHead = lip.from() instanceof BranchEnd.AtPlace ? 0 : slope;
    } else if (flow > most) {
      flow = most;
      flowPerHead = 0;
      flowPerLevel = 0;
    }
  }

  private void stop() {
    flow = 0;
    flowPerHead = 0;
    flowPerLevel = 0;
  }

  private void solve(double head, double loss, boolean shut, FlowPoint into) {
    if (shut) {
      into.flow = 0;
      into.flowPerHead = 0;
    } else {
      law.solve(direction * head, loss, into);
    }
  }

  private boolean isShut(double[] levels) {
    for (int i = 0; i < floats.size(); i++) {
      if (opening(floats.get(i), levels, 0) < SHUT) {
        return true;
      }
    }
    return false;
  }

  private double movingLoss(double[] levels, double nudge) {
    return movingLoss(floats, law.resistance().bore(), levels, nudge);
  }

  /** Loss of float valves in a bore (velocity heads) at these levels, all raised by a nudge (m). */
  static double movingLoss(List<FloatFixture> floats, double bore, double[] levels, double nudge) {
    double loss = 0;
    for (int i = 0; i < floats.size(); i++) {
      FloatFixture valve = floats.get(i);
      double opening = Math.max(opening(valve, levels, nudge), SHUT);
      loss += ValveLoss.fittingsOf(ValveLoss.kvAtOpening(valve.kv(), opening), bore);
    }
    return loss;
  }

  private static double opening(FloatFixture valve, double[] levels, double nudge) {
    double below = valve.closesAt() - levels[valve.place()] - nudge;
    return Math.clamp(below / valve.band(), 0, 1);
  }
}
