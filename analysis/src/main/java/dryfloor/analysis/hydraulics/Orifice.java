package dryfloor.analysis.hydraulics;

/**
 * Flow through a hole: Torricelli's law with a discharge coefficient,
 *
 * <pre>Q = Cd · A · √(2 g h)</pre>
 *
 * <p>where h is the head across the hole. Valid where the hole is small beside the water that feeds
 * it and the flow is fast enough not to be viscous; holes below about a millimetre pass less.
 *
 * <p>About a head of 0.01 mm the root turns smoothly into a straight line through 0, so that the
 * slope at no head is finite; the error in the flow is then at most a quarter of the flow at that
 * head.
 */
public final class Orifice {

  /**
   * Sharp-edged hole in a thin wall: 0.60 to 0.62 in textbooks (Daugherty and Franzini; from
   * memory); 0.611 for a slot by Kirchhoff's theory; 0.618 measured in Douglas, Gasiorek and
   * Swaffield, Fluid Mechanics, example 6.4.
   */
  public static final double SHARP = 0.61;

  /**
   * Short tube, two to three diameters long, running full: textbooks, 0.80 to 0.82 (from memory).
   */
  public static final double SHORT_TUBE = 0.82;

  /** Tube that stands into the water (Borda's mouthpiece), running clear: 0.51 (from memory). */
  public static final double RE_ENTRANT = 0.51;

  /** Well-rounded nozzle: textbooks, 0.96 to 0.99 (from memory). */
  public static final double ROUNDED = 0.98;

  /**
   * Crack, split seam or torn hose: an irregular sharp-edged hole, taken as such. Common practice,
   * as in leak calculations; no measured value for one particular crack exists beforehand.
   */
  public static final double CRACK = 0.61;

  /** Around this head the root turns smoothly into a straight line through 0 (m). */
  private static final double SMALL = 1e-5;

  private static final double ROOT_OF_TWO_G = Math.sqrt(2.0 * Physical.GRAVITY);

  private Orifice() {}

  /**
   * Flow, m³/s, with the sign of the head.
   *
   * @param coefficient discharge coefficient Cd, above 0 to 1
   * @param area of the hole, m²
   * @param head across the hole, m, either way
   */
  public static double flow(double coefficient, double area, double head) {
    double size = head * head + SMALL * SMALL;
    return coefficient * area * ROOT_OF_TWO_G * head / Math.sqrt(Math.sqrt(size));
  }

  /**
   * The slope of {@link #flow}: d flow / d head, m²/s, above 0, finite and continuous everywhere.
   *
   * @param coefficient discharge coefficient Cd, above 0 to 1
   * @param area of the hole, m²
   * @param head across the hole, m, either way
   */
  public static double flowPerHead(double coefficient, double area, double head) {
    double size = head * head + SMALL * SMALL;
    double slope = (0.5 * head * head + SMALL * SMALL) / (size * Math.sqrt(Math.sqrt(size)));
    return coefficient * area * ROOT_OF_TWO_G * slope;
  }
}
