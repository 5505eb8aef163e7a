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

  /** Whether the pressure at a hole that is large enough falls below that outside. */
  private boolean sucksAir;

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
    for (Pipe pipe : pipes) {
      if (pipe.bringsAirTo(this)) {
        return true;
      }
    }
    return sucksAir;
  }

  /** Whether another pipe brings more than drops. */
  boolean getsWaterFromOthersThan(Pipe pipe) {
    return pipes.stream().anyMatch(other -> other != pipe && other.arriving(this) > Pipe.STARVED);
  }

  /** Where no water moves at all, the air at a hole says what the head is. */
  void balance(double seconds) {
    sucksAir = false;
    if (isMoved(seconds)) {
      head = Laws.zeroNear(at -> net(at, seconds), head, 1e-5, lowest(), elevation + 1e4);
    }
    sucksAir = holes.stream().anyMatch(hole -> head < hole.elevation() && hole.letsAirIn());
    head = sucksAir ? elevation : head;
    net(head, seconds);
    shareOfHoles = 1;
    shareOut();
  }

  /** Whether water may come or go at it: where none does, its head is no matter. */
  boolean isMoved(double seconds) {
    double before = head;
    boolean moved = holes.isEmpty() || net(elevation, seconds) != 0;
    head = before;
    return moved;
  }

  /** The lowest that its head can be: an open pool does not sink below its bottom (m). */
  double lowest() {
    return isOpen() ? elevation : elevation - 100;
  }

  void setHead(double at) {
    head = at;
  }

  /** What arrives less what leaves, at this head (m³/s). */
  double net(double at, double seconds) {
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
