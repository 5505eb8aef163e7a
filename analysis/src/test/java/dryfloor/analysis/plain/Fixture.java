package dryfloor.analysis.plain;

import dryfloor.model.part.Part.Pump.CurvePoint;
import java.util.List;

/** What sits in a pipe and costs or gives head. */
abstract sealed class Fixture {

  final String id;
  final double along;

  Fixture(String id, double along) {
    this.id = id;
    this.along = along;
  }

  /** Head lost in the direction of the run at this flow, which may be negative (m). */
  abstract double drop(double flow);

  abstract boolean blocksForward();

  abstract boolean blocksBackward();

  /** A pump, running or not. */
  static final class Pump extends Fixture {
    final List<CurvePoint> curve;
    final double speed;
    final double share;
    final double stoppedLossPerFlowSquared;
    final boolean blocksWhenStopped;
    final boolean primesAgain;
    boolean running;
    boolean lostPrime;

    /** Whether the opening that it draws from lies bare, so that nothing holds what it lifted. */
    boolean bare;

    Pump(
        String id,
        double along,
        List<CurvePoint> curve,
        double speed,
        double share,
        double stoppedLossPerFlowSquared,
        boolean blocksWhenStopped,
        boolean primesAgain) {
      super(id, along);
      this.curve = curve;
      this.speed = speed;
      this.share = share;
      this.stoppedLossPerFlowSquared = stoppedLossPerFlowSquared;
      this.blocksWhenStopped = blocksWhenStopped;
      this.primesAgain = primesAgain;
    }

    boolean lifts() {
      return running && !lostPrime && !bare;
    }

    @Override
    double drop(double flow) {
      return lifts()
          ? -speed * speed * Laws.pumpHead(curve, flow / speed / share)
          : stoppedLossPerFlowSquared * flow * Math.abs(flow);
    }

    @Override
    boolean blocksForward() {
      return !lifts() && blocksWhenStopped;
    }

    @Override
    boolean blocksBackward() {
      return blocksWhenStopped;
    }
  }

  /** A valve, float valve or restrictor. */
  static final class Valve extends Fixture {
    final double kv;
    double opening;

    Valve(String id, double along, double kv, double opening) {
      super(id, along);
      this.kv = kv;
      this.opening = opening;
    }

    @Override
    double drop(double flow) {
      return Math.signum(flow) * Laws.valveLoss(Math.abs(flow), kv * Math.max(opening, 1e-4));
    }

    @Override
    boolean blocksForward() {
      return opening < 1e-4;
    }

    @Override
    boolean blocksBackward() {
      return blocksForward();
    }
  }

  /** A check valve in the state that a failure leaves it in. */
  static final class Check extends Fixture {
    final double crackingHead;
    final double lossPerFlowSquared;
    final boolean heldShut;
    final boolean heldOpen;
    final double leak;

    Check(
        String id,
        double along,
        double crackingHead,
        double lossPerFlowSquared,
        boolean heldShut,
        boolean heldOpen,
        double leak) {
      super(id, along);
      this.crackingHead = crackingHead;
      this.lossPerFlowSquared = lossPerFlowSquared;
      this.heldShut = heldShut;
      this.heldOpen = heldOpen;
      this.leak = leak;
    }

    @Override
    double drop(double flow) {
      if (heldOpen) {
        return lossPerFlowSquared * flow * Math.abs(flow);
      }
      if (flow >= 0) {
        return crackingHead + lossPerFlowSquared * flow * flow;
      }
      double jet = flow / (Laws.HOLE * Math.max(leak, 1e-9));
      return -jet * jet / (2 * Laws.G);
    }

    @Override
    boolean blocksForward() {
      return heldShut;
    }

    @Override
    boolean blocksBackward() {
      return heldShut || (!heldOpen && leak <= 0);
    }
  }

  /** A strainer or a device that costs head and lets water through both ways. */
  static final class Loss extends Fixture {
    final double lossPerFlowSquared;

    Loss(String id, double along, double lossPerFlowSquared) {
      super(id, along);
      this.lossPerFlowSquared = lossPerFlowSquared;
    }

    @Override
    double drop(double flow) {
      return lossPerFlowSquared * flow * Math.abs(flow);
    }

    @Override
    boolean blocksForward() {
      return false;
    }

    @Override
    boolean blocksBackward() {
      return false;
    }
  }

  /** A source that gives no more than so much. */
  static final class Source extends Fixture {
    final double lossPerFlowSquared;

    Source(String id, double lossPerFlowSquared) {
      super(id, 0);
      this.lossPerFlowSquared = lossPerFlowSquared;
    }

    @Override
    double drop(double flow) {
      return lossPerFlowSquared * flow * Math.abs(flow);
    }

    @Override
    boolean blocksForward() {
      return false;
    }

    @Override
    boolean blocksBackward() {
      return true;
    }
  }
}
