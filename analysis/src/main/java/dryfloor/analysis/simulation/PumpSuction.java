package dryfloor.analysis.simulation;

/**
 * How much of its flow a pump takes as its opening comes out of the water.
 *
 * <p>All of it while a skin of water stands above the opening, none once the water has fallen to
 * it. In between the level rests where the pump takes just what arrives: the sliding state of
 * Filippov, Differential Equations with Discontinuous Righthand Sides (1988), with the
 * discontinuity spread over the skin.
 */
final class PumpSuction {

  /** Water over an opening within which it goes from covered to uncovered (m). */
  static final double SKIN = 2e-4;

  private PumpSuction() {}

  /** Share of the flow taken with water standing this high over the opening (m). */
  static double share(double depth) {
    return Math.clamp(depth / SKIN, 0, 1);
  }

  /** Slope of {@link #share} (1/m). */
  static double sharePerDepth(double depth) {
    return depth > 0 && depth < SKIN ? 1 / SKIN : 0;
  }
}
