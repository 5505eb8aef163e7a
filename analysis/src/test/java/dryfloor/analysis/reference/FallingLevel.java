package dryfloor.analysis.reference;

import java.util.function.DoubleUnaryOperator;

/** How long a level takes to fall, by Simpson's rule over the root of the head. */
final class FallingLevel {

  private static final int STEPS = 2000;

  private FallingLevel() {}

  /**
   * Time, s.
   *
   * @param from head, m
   * @param to head, m, below that
   * @param area of the surface, m²
   * @param outflow m³/s at a head
   */
  static double time(double from, double to, double area, DoubleUnaryOperator outflow) {
    double start = Math.sqrt(to);
    double width = (Math.sqrt(from) - start) / STEPS;
    double sum = 0.0;
    for (int i = 0; i <= STEPS; i++) {
      double root = start + i * width;
      double weight = i == 0 || i == STEPS ? 1.0 : i % 2 == 1 ? 4.0 : 2.0;
      sum += weight * 2.0 * root * area / outflow.applyAsDouble(root * root);
    }
    return sum * width / 3.0;
  }
}
