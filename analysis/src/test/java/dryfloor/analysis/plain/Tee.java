package dryfloor.analysis.plain;

import java.util.ArrayList;
import java.util.List;

/** Where pipes meet. Its head is whatever lets as much arrive as leaves. */
final class Tee extends Node {

  final double elevation;
  final List<Pipe> pipes = new ArrayList<>();
  final List<TeeHole> holes = new ArrayList<>();
  private double head;
  private double shareOfHoles = 1;

  /** A hole in the pipe just here. */
  record TeeHole(double area, double elevation, boolean letsAirIn, Place landing) {

    double flow(double head) {
      double inside = Math.max(0, head - elevation);
      double outside = Math.max(0, landing.level() - elevation);
      return inside >= outside ? Laws.hole(area, inside - outside) : 0;
    }
  }

  Tee(String id, double elevation) {
    super(id);
    this.elevation = elevation;
    this.head = elevation;
  }

  @Override
  double level() {
    return head;
  }

  /** Whether air stands at it, so that it is a small pool and no full pipe. */
  boolean isOpen() {
    return pipes.stream().anyMatch(pipe -> pipe.bringsAirTo(this))
        || holes.stream().anyMatch(hole -> head < hole.elevation() && hole.letsAirIn());
  }

  /** Where no water moves at all, the air at a hole says what the head is. */
  void balance(double seconds) {
    boolean open = isOpen();
    double guess = head;
    if (holes.isEmpty() || net(elevation, seconds) != 0) {
      double low = open ? elevation : elevation - 100;
      head = Laws.zeroNear(at -> net(at, seconds), guess, 1e-5, low, elevation + 1e4);
    }
    net(head, seconds);
    shareOfHoles = 1;
    shareOut();
  }

  /**
   * Lifts full tees by as much until as much arrives at all of them as leaves: where wide pipes
   * join them, each by itself follows the others only in tiny steps.
   */
  static void balanceTogether(List<Tee> joined, double seconds) {
    List<Tee> full = joined.stream().filter(tee -> !tee.isOpen()).toList();
    double[] heads = full.stream().mapToDouble(tee -> tee.head).toArray();
    if (full.size() > 1) {
      double lift = Laws.zeroNear(by -> net(full, heads, by, seconds), 0, 1e-5, -100, 1e4);
      net(full, heads, lift, seconds);
    }
  }

  private static double net(List<Tee> full, double[] heads, double lift, double seconds) {
    for (int i = 0; i < heads.length; i++) {
      full.get(i).head = heads[i] + lift;
    }
    return full.stream().mapToDouble(tee -> tee.net(tee.head, seconds)).sum();
  }

  /** What arrives less what leaves, at this head (m³/s). */
  private double net(double at, double seconds) {
    head = at;
    double net = 0;
    for (Pipe pipe : pipes) {
      pipe.evaluate(seconds);
      net += pipe.arriving(this);
    }
    for (TeeHole hole : holes) {
      net -= hole.flow(at);
    }
    return net;
  }

  /**
   * Passes on what arrives and no more: a pool that is empty has nothing to give, and where flows
   * jump with the head there is none at which they balance. Returns what was too much (m³/s).
   */
  double shareOut() {
    double in = pipes.stream().mapToDouble(pipe -> Math.max(0, pipe.arriving(this))).sum();
    double throughHoles = holes.stream().mapToDouble(this::through).sum();
    double out =
        throughHoles + pipes.stream().mapToDouble(pipe -> Math.max(0, -pipe.arriving(this))).sum();
    if (out > in) {
      shareOfHoles *= in / out;
      pipes.stream()
          .filter(pipe -> pipe.arriving(this) < 0)
          .forEach(pipe -> pipe.cutAt(this, in / out));
    } else if (in > out) {
      pipes.stream()
          .filter(pipe -> pipe.arriving(this) > 0)
          .forEach(pipe -> pipe.cutAt(this, out / in));
    }
    return Math.abs(in - out);
  }

  /** What leaves through one of its holes (m³/s). */
  double through(TeeHole hole) {
    return shareOfHoles * hole.flow(head);
  }
}
