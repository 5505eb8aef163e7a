package dryfloor.analysis.hydraulics;

/**
 * What an upright drain pipe carries as a film on its wall with an open core of air: it then runs
 * quietly and can't become a siphon.
 *
 * <pre>
 * q = 27.8 r^(5/3) d^(8/3)      q in US gal/min, d in inches, r the share of the bore that is water
 * </pre>
 *
 * <p>Wyly and Eaton, National Bureau of Standards Monograph 31 (1961), form from memory; it gives
 * all nine values of the National Standard Plumbing Code (2006), table 13.6.1, at r = 7/24. Valid
 * for pipes of 50 to 380 mm, r from 1/4 to 1/3, long enough for the film to reach its final speed.
 */
public final class Stack {

  /** The share that plumbing practice allows in a rainwater leader: 7/24 of the bore. */
  public static final double LEADER_SHARE = 7.0 / 24.0;

  private static final double INCH = 0.0254;
  private static final double US_GALLON_PER_MINUTE = 3.785411784e-3 / 60.0;

  private Stack() {}

  /**
   * Flow of the film, m³/s.
   *
   * @param diameter bore, m
   * @param shareOfBore share of the bore that is water, 1/4 to 1/3
   */
  public static double filmFlow(double diameter, double shareOfBore) {
    return 27.8
        * Math.pow(shareOfBore, 5.0 / 3.0)
        * Math.pow(diameter / INCH, 8.0 / 3.0)
        * US_GALLON_PER_MINUTE;
  }
}
