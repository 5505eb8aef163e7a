package dryfloor.analysis.hydraulics;

/**
 * Head lost in a valve rated by its flow coefficient.
 *
 * <p>Kv is the flow of water in m³/h that loses 1 bar; Cv the flow in US gallons per minute that
 * loses 1 psi (IEC 60534-1). Both go with the square of the flow and inversely with density, so the
 * head lost does not depend on what the water weighs:
 *
 * <pre>h = (Q/Kv)² · 1 bar / (1000 kg/m³ · g)</pre>
 *
 * <p>Valid in turbulent flow without cavitation. Below a hundred-thousandth of the rated flow,
 * where the loss is about a nanometre, the square goes over into a straight line, so that the slope
 * at rest is above 0.
 */
public final class ValveLoss {

  /** Exact from the definitions of bar, psi, US gallon: 0.865 m³/h for one US gal/min. */
  private static final double KV_PER_CV =
      3.785411784e-3 * 60.0 * Math.sqrt(1e5 / 6894.757293168361);

  private static final double SECONDS_PER_HOUR = 3600.0;
  private static final double BAR_OVER_REFERENCE_DENSITY = 1e5 / 1000.0;
  private static final double LINEAR_BELOW_FRACTION_OF_RATED = 1e-5;

  private ValveLoss() {}

  /**
   * Head lost, m, with the sign of the flow.
   *
   * @param flow m³/s, either way
   * @param kv flow coefficient as the valve stands, m³/h at 1 bar, above 0
   */
  public static double head(double flow, double kv) {
    double share = flow * SECONDS_PER_HOUR / kv;
    return BAR_OVER_REFERENCE_DENSITY / Physical.GRAVITY * share * magnitude(share);
  }

  /**
   * The slope of {@link #head}: d head / d flow, s/m², above 0 also at rest.
   *
   * @param flow m³/s, either way
   * @param kv flow coefficient as the valve stands, m³/h at 1 bar, above 0
   */
  public static double headPerFlow(double flow, double kv) {
    double share = flow * SECONDS_PER_HOUR / kv;
    double magnitude = magnitude(share);
    return BAR_OVER_REFERENCE_DENSITY
        / Physical.GRAVITY
        * (share * share / magnitude + magnitude)
        * SECONDS_PER_HOUR
        / kv;
  }

  /**
   * Flow coefficient of a partly open valve, with a linear characteristic: common practice where
   * the maker gives no curve. A ball or butterfly valve passes less than that when nearly shut.
   *
   * @param kv flow coefficient fully open, m³/h at 1 bar
   * @param opening 0 shut to 1 open; a shut valve has no loss law but passes nothing
   */
  public static double kvAtOpening(double kv, double opening) {
    return kv * opening;
  }

  /**
   * Kv, m³/h at 1 bar, from Cv, US gal/min at 1 psi: the two definitions are 0.865 apart.
   *
   * @param cv US gal/min at 1 psi
   */
  public static double kvFromCv(double cv) {
    return KV_PER_CV * cv;
  }

  /**
   * Loss coefficient K on the velocity head of a pipe, for use as fittings in {@link PipeLoss}.
   *
   * @param kv m³/h at 1 bar, above 0
   * @param diameter bore of the pipe, m, above 0
   */
  public static double fittingsOf(double kv, double diameter) {
    double area = Physical.areaOfBore(diameter) * SECONDS_PER_HOUR / kv;
    return 2.0 * BAR_OVER_REFERENCE_DENSITY * area * area;
  }

  private static double magnitude(double share) {
    return Math.sqrt(
        share * share + LINEAR_BELOW_FRACTION_OF_RATED * LINEAR_BELOW_FRACTION_OF_RATED);
  }
}
