package dryfloor.analysis.hydraulics;

/**
 * Head lost in a round pipe running full: Darcy–Weisbach friction and fittings,
 *
 * <pre>h = ( f L/D + ΣK ) V² / 2g</pre>
 *
 * <p>f from {@link Friction}; K as in {@link Fitting}, on the velocity in this bore. Any consistent
 * flow is valid; the loss rises strictly with the flow and has its sign.
 *
 * <p>The fittings' share goes with V·√(V² + V₀²), where V₀ is the velocity at Re = 10, so that a
 * pipe without length still has a slope at rest. At Re = 1000 that adds 0.005 %; measured K values
 * rise far more than that in so slow a flow (Hooper, Chemical Engineering, 24 August 1981, the
 * two-K method; from memory).
 */
public final class PipeLoss {

  private static final double FITTINGS_GO_LINEAR_AT_REYNOLDS = 10.0;

  private PipeLoss() {}

  /**
   * Head lost, m, with the sign of the flow.
   *
   * @param flow m³/s, either way
   * @param diameter bore, m, above 0
   * @param length m, 0 or more
   * @param roughness height of the roughness, m, 0 or more
   * @param fittings sum of loss coefficients K, 0 or more
   * @param kinematicViscosity m²/s, above 0
   */
  public static double head(
      double flow,
      double diameter,
      double length,
      double roughness,
      double fittings,
      double kinematicViscosity) {
    double velocity = flow / Physical.areaOfBore(diameter);
    double reynolds = Math.abs(velocity) * diameter / kinematicViscosity;
    double slow = slowVelocity(diameter, kinematicViscosity);
    double friction =
        reynolds < Friction.PURELY_LAMINAR
            ? laminarSlope(diameter, length, kinematicViscosity) * velocity
            : Friction.factor(reynolds, roughness / diameter)
                * length
                / diameter
                * velocity
                * Math.abs(velocity)
                / (2.0 * Physical.GRAVITY);
    double minor =
        fittings
            * velocity
            * Math.sqrt(velocity * velocity + slow * slow)
            / (2.0 * Physical.GRAVITY);
    return friction + minor;
  }

  /**
   * The exact slope of {@link #head}: d head / d flow, s/m². Above 0 also at rest, unless the pipe
   * has neither length nor fittings.
   *
   * @param flow m³/s, either way
   * @param diameter bore, m, above 0
   * @param length m, 0 or more
   * @param roughness height of the roughness, m, 0 or more
   * @param fittings sum of loss coefficients K, 0 or more
   * @param kinematicViscosity m²/s, above 0
   */
  public static double headPerFlow(
      double flow,
      double diameter,
      double length,
      double roughness,
      double fittings,
      double kinematicViscosity) {
    double area = Physical.areaOfBore(diameter);
    double velocity = Math.abs(flow) / area;
    double reynolds = velocity * diameter / kinematicViscosity;
    double slow = slowVelocity(diameter, kinematicViscosity);
    double relativeRoughness = roughness / diameter;
    double friction =
        reynolds < Friction.PURELY_LAMINAR
            ? laminarSlope(diameter, length, kinematicViscosity)
            : Friction.factor(reynolds, relativeRoughness)
                * (2.0 + Friction.logarithmicSlope(reynolds, relativeRoughness))
                * length
                / diameter
                * velocity
                / (2.0 * Physical.GRAVITY);
    double squares = velocity * velocity + slow * slow;
    double minor =
        fittings * (velocity * velocity + squares) / (Math.sqrt(squares) * 2.0 * Physical.GRAVITY);
    return (friction + minor) / area;
  }

  /** Hagen–Poiseuille: head lost for each m/s of mean velocity, s. */
  private static double laminarSlope(double diameter, double length, double kinematicViscosity) {
    return 32.0 * kinematicViscosity * length / (Physical.GRAVITY * diameter * diameter);
  }

  static double slowVelocity(double diameter, double kinematicViscosity) {
    return FITTINGS_GO_LINEAR_AT_REYNOLDS * kinematicViscosity / diameter;
  }
}
