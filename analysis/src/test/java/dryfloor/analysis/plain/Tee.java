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
    shareOut();
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
   * jump with the head there is none at which they balance.
   */
  private void shareOut() {
    double in = pipes.stream().mapToDouble(pipe -> Math.max(0, pipe.arriving(this))).sum();
    double throughHoles = holes.stream().mapToDouble(hole -> hole.flow(head)).sum();
    double out =
        throughHoles + pipes.stream().mapToDouble(pipe -> Math.max(0, -pipe.arriving(this))).sum();
    shareOfHoles = out > in ? in / out : 1;
    if (out > in) {
      pipes.stream().filter(pipe -> pipe.arriving(this) < 0).forEach(pipe -> pipe.cutTo(in / out));
    } else if (in > out) {
      pipes.stream().filter(pipe -> pipe.arriving(this) > 0).forEach(pipe -> pipe.cutTo(out / in));
    }
  }

  /** What leaves through one of its holes (m³/s). */
  double through(TeeHole hole) {
    return shareOfHoles * hole.flow(head);
  }
}
