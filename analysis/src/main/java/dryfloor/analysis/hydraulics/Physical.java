package dryfloor.analysis.hydraulics;

/** Constants of nature and of definition that the laws share. */
public final class Physical {

  /**
   * Standard acceleration of free fall, m/s² (3rd CGPM, 1901). The true value differs by up to 0.3
   * % between equator and pole, far below every other uncertainty of an installation.
   */
  public static final double GRAVITY = 9.80665;

  /**
   * Standard atmosphere, Pa (10th CGPM, 1954). A building at 1000 m above the sea has some 11 %
   * less.
   */
  public static final double ATMOSPHERE = 101_325.0;

  private Physical() {}

  /** Area of a round bore, m², from its diameter, m. */
  static double areaOfBore(double diameter) {
    return Math.PI / 4.0 * diameter * diameter;
  }
}
