package dryfloor.analysis.plain;

import java.util.List;

/** A piece of pipe between two heads; k is the sum of its fittings (velocity heads). */
final class Stretch {
  final double bore;
  final double length;
  final double roughness;
  final double k;
  final List<Fixture> fixtures;
  final double viscosity;
  private double lastFlow;

  Stretch(
      double bore,
      double length,
      double roughness,
      double k,
      List<Fixture> fixtures,
      double viscosity) {
    this.bore = bore;
    this.length = length;
    this.roughness = roughness;
    this.k = k;
    this.fixtures = fixtures;
    this.viscosity = viscosity;
  }

  /** Head lost at a flow, less what pumps add (m). */
  double drop(double flow) {
    double drop =
        Math.signum(flow) * Laws.pipeLoss(Math.abs(flow), bore, length, roughness, k, viscosity);
    for (Fixture fixture : fixtures) {
      drop += fixture.drop(flow);
    }
    return drop;
  }

  /** The flow that a difference of heads drives, by trial (m³/s). */
  double flow(double difference) {
    double small = 1e-15;
    if (difference > drop(small)) {
      return blocks(1) ? 0 : search(difference, 1);
    }
    if (difference < drop(-small)) {
      return blocks(-1) ? 0 : search(difference, -1);
    }
    return 0;
  }

  /** Whether something lets no water through that way: 1 is forward, -1 backward. */
  boolean blocks(int direction) {
    for (Fixture fixture : fixtures) {
      if (direction > 0 ? fixture.blocksForward() : fixture.blocksBackward()) {
        return true;
      }
    }
    return false;
  }

  private double search(double difference, int direction) {
    double size =
        Laws.zeroNear(
            q -> direction * (difference - drop(direction * q)),
            Math.abs(lastFlow),
            Math.abs(lastFlow) * 1e-4 + 1e-9,
            0,
            10);
    lastFlow = size;
    return direction * size;
  }

  boolean pumps() {
    for (Fixture fixture : fixtures) {
      if (fixture instanceof Fixture.Pump pump && pump.lifts()) {
        return true;
      }
    }
    return false;
  }
}
