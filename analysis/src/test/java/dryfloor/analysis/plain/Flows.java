package dryfloor.analysis.plain;

import java.util.List;

/** All flows of one moment (m³/s). */
final class Flows {

  final double[] from;
  final double[] over;
  final double[] to;
  final double[] way;
  final double[] filling;
  final double[] hole;

  Flows(int pipes, int ways, int held, int holes) {
    from = new double[pipes];
    over = new double[pipes];
    to = new double[pipes];
    way = new double[ways];
    filling = new double[held];
    hole = new double[holes];
  }

  /** The middle of two. */
  static Flows middle(Flows a, Flows b) {
    Flows middle = new Flows(a.from.length, a.way.length, a.filling.length, a.hole.length);
    for (List<double[]> part :
        List.of(
            List.of(a.from, b.from, middle.from),
            List.of(a.over, b.over, middle.over),
            List.of(a.to, b.to, middle.to),
            List.of(a.way, b.way, middle.way),
            List.of(a.filling, b.filling, middle.filling),
            List.of(a.hole, b.hole, middle.hole))) {
      for (int i = 0; i < part.getFirst().length; i++) {
        part.getLast()[i] = (part.get(0)[i] + part.get(1)[i]) / 2;
      }
    }
    return middle;
  }
}
