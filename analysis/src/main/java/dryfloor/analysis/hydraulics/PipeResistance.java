package dryfloor.analysis.hydraulics;

/**
 * What one stretch of round pipe running full resists, made ready to be asked often: the same law
 * as {@link PipeLoss}, with {@link FrictionTable} for its friction.
 *
 * <p>The friction's share of the head is ν² L / (2 g D³) · f·Re²; the fittings' share is that of
 * {@link PipeLoss}. It differs from {@link PipeLoss} by less than 1e-7 of itself.
 */
public final class PipeResistance {

  private final double bore;
  private final FrictionTable friction;
  private final double reynoldsPerFlow;
  private final double headPerProduct;
  private final double velocityPerFlow;
  private final double slowSquared;

  private PipeResistance(
      double bore, double length, double roughness, double kinematicViscosity, double slow) {
    this.bore = bore;
    friction = FrictionTable.of(roughness / bore);
    velocityPerFlow = 1.0 / Physical.areaOfBore(bore);
    reynoldsPerFlow = velocityPerFlow * bore / kinematicViscosity;
    headPerProduct =
        kinematicViscosity
            * kinematicViscosity
            * length
            / (2.0 * Physical.GRAVITY * bore * bore * bore);
    slowSquared = slow * slow;
  }

  /**
   * The resistance of a stretch.
   *
   * @param bore m, above 0
   * @param length m, 0 or more
   * @param roughness height of the roughness, m, 0 or more
   * @param kinematicViscosity m²/s, above 0
   */
  public static PipeResistance of(
      double bore, double length, double roughness, double kinematicViscosity) {
    double slow = PipeLoss.slowVelocity(bore, kinematicViscosity);
    return new PipeResistance(bore, length, roughness, kinematicViscosity, slow);
  }

  /** Bore, m. */
  public double bore() {
    return bore;
  }

  /**
   * Head lost, m, with the sign of the flow.
   *
   * @param flow m³/s, either way
   * @param fittings sum of loss coefficients K, 0 or more
   */
  public double head(double flow, double fittings) {
    double velocity = flow * velocityPerFlow;
    double rubbing = headPerProduct * friction.product(Math.abs(flow) * reynoldsPerFlow);
    double minor = fittings * velocity * Math.sqrt(velocity * velocity + slowSquared);
    return Math.copySign(rubbing, flow) + minor / (2.0 * Physical.GRAVITY);
  }

  /**
   * The exact slope of {@link #head}: d head / d flow, s/m².
   *
   * @param flow m³/s, either way
   * @param fittings sum of loss coefficients K, 0 or more
   */
  public double headPerFlow(double flow, double fittings) {
    double velocity = flow * velocityPerFlow;
    double rubbing =
        headPerProduct
            * reynoldsPerFlow
            * friction.productPerReynolds(Math.abs(flow) * reynoldsPerFlow);
    double squares = velocity * velocity + slowSquared;
    double minor = fittings * (velocity * velocity + squares) / Math.sqrt(squares);
    return rubbing + minor * velocityPerFlow / (2.0 * Physical.GRAVITY);
  }
}
