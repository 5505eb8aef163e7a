package dryfloor.analysis.plain;

import java.util.ArrayList;
import java.util.List;

/** Where pipes meet. Its head is whatever lets as much arrive as leaves. */
final class Tee extends Node {

  final double elevation;
  final List<Pipe> pipes = new ArrayList<>();
  final List<TeeHole> holes = new ArrayList<>();
  private double head;

  /** A hole in the pipe just here. */
  record TeeHole(double area, double elevation, Place landing) {

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
        || holes.stream().anyMatch(hole -> head < hole.elevation() && hole.area() > 1e-5);
  }

  void balance(double seconds) {
    boolean open = isOpen();
    double low = open ? elevation : elevation - 100;
    head = Laws.bisectNear(at -> net(at, seconds), head, 1e-5, low, elevation + 1e4);
    net(head, seconds);
    if (open) {
      shareOut();
    }
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

  /** A pool that is empty passes on what arrives and no more. */
  private void shareOut() {
    double in = pipes.stream().mapToDouble(pipe -> Math.max(0, pipe.arriving(this))).sum();
    double out = pipes.stream().mapToDouble(pipe -> Math.max(0, -pipe.arriving(this))).sum();
    if (out > in + 1e-12) {
      pipes.stream().filter(pipe -> pipe.arriving(this) < 0).forEach(pipe -> pipe.cutTo(in / out));
    }
  }
}
