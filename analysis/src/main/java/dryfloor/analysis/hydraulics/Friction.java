package dryfloor.analysis.hydraulics;

/**
 * Friction factor of a round pipe running full, as Darcy wrote it (four times Fanning's).
 *
 * <p>Churchill, Chemical Engineering 84 (7 November 1977) 91–92: one expression over laminar,
 * transition and turbulent flow,
 *
 * <pre>
 * f = 8 [ (8/Re)^12 + (A + B)^-1.5 ]^(1/12)
 * A = [ 2.457 ln( 1 / ((7/Re)^0.9 + 0.27 e/D) ) ]^16      B = (37530/Re)^16
 * </pre>
 *
 * <p>Valid for Reynolds numbers up to 1e8 and relative roughness up to 0.05. Between Re 2100 and
 * 4000 flow has no one answer in nature; the expression gives one, and f·Re² still rises without a
 * break.
 */
public final class Friction {

  /**
   * Below this Reynolds number the turbulent part of the sum is less than 1e-16 of the laminar one,
   * so that 64/Re is the same number, without powers that overflow as Re goes to nothing.
   */
  static final double PURELY_LAMINAR = 500.0;

  private Friction() {}

  /**
   * Darcy friction factor.
   *
   * @param reynolds V·D/ν, above 0
   * @param relativeRoughness height of the roughness over the bore, 0 to 0.05
   */
  public static double factor(double reynolds, double relativeRoughness) {
    if (reynolds < PURELY_LAMINAR) {
      return 64.0 / reynolds;
    }
    double laminar = twelfthPower(8.0 / reynolds);
    double rough = roughTurbulent(Math.pow(7.0 / reynolds, 0.9) + 0.27 * relativeRoughness);
    double both = rough + sixteenthPower(37_530.0 / reynolds);
    return 8.0 * Math.pow(laminar + 1.0 / (both * Math.sqrt(both)), 1.0 / 12.0);
  }

  /**
   * How steeply the factor changes: d ln f / d ln Re, which is −1 in laminar flow, rises above 0 in
   * the transition and tends to 0 in a rough pipe. The exact derivative of {@link #factor}.
   *
   * @param reynolds V·D/ν, above 0
   * @param relativeRoughness height of the roughness over the bore, 0 to 0.05
   */
  static double logarithmicSlope(double reynolds, double relativeRoughness) {
    if (reynolds < PURELY_LAMINAR) {
      return -1.0;
    }
    double laminar = twelfthPower(8.0 / reynolds);
    double viscous = Math.pow(7.0 / reynolds, 0.9);
    double roughness = viscous + 0.27 * relativeRoughness;
    double rough = roughTurbulent(roughness);
    double onset = sixteenthPower(37_530.0 / reynolds);
    double both = rough + onset;
    double turbulent = 1.0 / (both * Math.sqrt(both));
    double roughSlope = 16.0 * rough * 0.9 * viscous / (roughness * -Math.log(roughness));
    double turbulentSlope = -1.5 * turbulent * (roughSlope - 16.0 * onset) / both;
    return (turbulentSlope / 12.0 - laminar) / (laminar + turbulent);
  }

  private static double roughTurbulent(double roughness) {
    return sixteenthPower(-2.457 * Math.log(roughness));
  }

  private static double twelfthPower(double x) {
    double fourth = x * x * x * x;
    return fourth * fourth * fourth;
  }

  private static double sixteenthPower(double x) {
    double fourth = x * x * x * x;
    return fourth * fourth * fourth * fourth;
  }
}
