package dryfloor.analysis.hydraulics;

/**
 * Flow through a hole: Torricelli's law with a discharge coefficient,
 *
 * <pre>Q = Cd · A · √(2 g h)</pre>
 *
 * <p>where h is the head across the hole. Valid where the hole is small beside the water that feeds
 * it and the flow is fast enough not to be viscous; holes below about a millimetre pass less.
 *
 * <p>Below a head of 0.01 mm the root goes over into a straight line of the same value there, so
 * that the slope at no head is finite; the error in the flow is then at most a quarter of the flow
 * at that head.
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

  private static final double LINEAR_BELOW = 1e-5;
  private static final double ROOT_OF_TWO_G = Math.sqrt(2.0 * Physical.GRAVITY);
  private static final double ROOT_OF_LINEAR_BELOW = Math.sqrt(LINEAR_BELOW);

  private Orifice() {}

  /**
   * Flow, m³/s, with the sign of the head.
   *
   * @param coefficient discharge coefficient Cd, above 0 to 1
   * @param area of the hole, m²
   * @param head across the hole, m, either way
   */
  public static double flow(double coefficient, double area, double head) {
    double size = Math.abs(head);
    double velocity =
        size < LINEAR_BELOW ? head / ROOT_OF_LINEAR_BELOW : Math.copySign(Math.sqrt(size), head);
    return coefficient * area * ROOT_OF_TWO_G * velocity;
  }

  /**
   * The slope of {@link #flow}: d flow / d head, m²/s, above 0 and finite everywhere. It halves
   * where the straight line ends.
   *
   * @param coefficient discharge coefficient Cd, above 0 to 1
   * @param area of the hole, m²
   * @param head across the hole, m, either way
   */
  public static double flowPerHead(double coefficient, double area, double head) {
    double size = Math.abs(head);
    double slope = size < LINEAR_BELOW ? 1.0 / ROOT_OF_LINEAR_BELOW : 0.5 / Math.sqrt(size);
    return coefficient * area * ROOT_OF_TWO_G * slope;
  }
}
