package dryfloor.analysis.hydraulics;

/**
 * A round pipe that falls and runs partly full, with air above the water: Manning's formula for
 * steady, even flow,
 *
 * <pre>Q = (1/n) A R^(2/3) √S</pre>
 *
 * <p>with the area A of the water and R, that area over the wetted part of the wall (Chow,
 * Open-Channel Hydraulics, 1959; from memory). The depth so found is that of a long even fall; near
 * the inlet and in bends the water stands otherwise, so what a pipe holds by it is an estimate,
 * good to some ten per cent or two.
 */
public final class OpenRun {

  /**
   * Manning's n of smooth plastic pipe, s/m^(1/3). City of Austin, Drainage Criteria Manual, table
   * 5-2: 0.010 (seen in a quotation); Chow 1959, table of roughness, glass and smooth brass: 0.010
   * (from memory).
   */
  public static final double SMOOTH_PLASTIC = 0.010;

  /** Depth over bore at which a round pipe carries most; fuller, the wall holds back more. */
  private static final double MOST_AT = 0.938;

  private static final int HALVINGS = 60;

  private OpenRun() {}

  /**
   * Area of the water, m².
   *
   * @param depth m, 0 to the diameter
   * @param diameter bore, m, above 0
   */
  public static double area(double depth, double diameter) {
    double angle = angle(depth, diameter);
    return diameter * diameter / 8.0 * (angle - Math.sin(angle));
  }

  /**
   * Flow, m³/s.
   *
   * @param depth m, 0 to the diameter
   * @param diameter bore, m, above 0
   * @param slope fall over length along the pipe, 0 to 1
   * @param roughness Manning's n, above 0
   */
  public static double flow(double depth, double diameter, double slope, double roughness) {
    double wetted = angle(depth, diameter) * diameter / 2.0;
    if (wetted <= 0.0) {
      return 0.0;
    }
    double area = area(depth, diameter);
    return area / roughness * Math.pow(area / wetted, 2.0 / 3.0) * Math.sqrt(slope);
  }

  /**
   * Area of the water at a flow, m²; that of the bore where the pipe can't carry it with air above.
   *
   * @param flow m³/s, 0 or more
   * @param diameter bore, m, above 0
   * @param slope fall over length along the pipe, 0 to 1
   * @param roughness Manning's n, above 0
   */
  public static double areaAtFlow(double flow, double diameter, double slope, double roughness) {
    double low = 0.0;
    double high = MOST_AT * diameter;
    if (flow >= flow(high, diameter, slope, roughness)) {
      return Physical.areaOfBore(diameter);
    }
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2.0;
      if (flow(middle, diameter, slope, roughness) < flow) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return area(high, diameter);
  }

  /** Angle at the middle of the pipe that the water's surface spans, radians. */
  private static double angle(double depth, double diameter) {
    return 2.0 * Math.acos(Math.clamp(1.0 - 2.0 * depth / diameter, -1.0, 1.0));
  }
}
