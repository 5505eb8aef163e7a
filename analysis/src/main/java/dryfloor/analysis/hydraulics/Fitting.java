package dryfloor.analysis.hydraulics;

/**
 * Loss coefficients K of the usual fittings, on the velocity head V²/2g of the pipe they sit in.
 *
 * <p>Valid in turbulent flow, for fittings of the same bore as the pipe and some diameters apart.
 * Published values scatter widely (a 90° elbow: 0.3 flanged to 1.5 threaded in one and the same
 * table), so a maker's own figure is better wherever there is one. Sources:
 *
 * <ul>
 *   <li>Munson: Munson, Young and Okiishi, Fundamentals of Fluid Mechanics, table 8.2 (seen in a
 *       reproduction of the page).
 *   <li>Water supply handbook: the table of special losses of head that civil engineering handbooks
 *       share (seen in two quotations without author).
 *   <li>Crane: Crane Co., Technical Paper 410, appendix A (2009), with K = n·fT and fT = 0.023 for
 *       a 25 mm pipe (n from memory unless told otherwise).
 * </ul>
 */
public enum Fitting {
  /** Sharp-edged pipe end flush with a wall. Crane, Idelchik, Blevins: 0.50 (seen quoted). */
  ENTRANCE(0.5),
  /** Well-rounded pipe end flush with a wall, radius at least 0.15 of the bore. Crane: 0.04. */
  ENTRANCE_ROUNDED(0.04),
  /** Pipe end that stands into the water. Crane: 0.78; water supply handbook: 0.8 to 1.0. */
  ENTRANCE_RE_ENTRANT(0.78),
  /** Pipe end under water or in free air: the velocity head is lost. Borda–Carnot: 1, exact. */
  EXIT(1.0),
  /** Elbow of short radius. Water supply handbook: 0.9; Munson: 0.3 flanged, 1.5 threaded. */
  ELBOW_90(0.9),
  /** Two pipes meeting square without a curve. Water supply handbook: 1.25 to 1.8; Miller: 1.1. */
  MITRE_90(1.3),
  /** Sweep of long radius. Water supply handbook: 0.60; Munson: 0.2 flanged, 0.7 threaded. */
  LONG_BEND_90(0.6),
  /** Half elbow. Munson: 0.4 threaded; water supply handbook: 0.30 to 0.42. */
  ELBOW_45(0.4),
  /** Close return bend. Munson: 0.2 flanged, 1.5 threaded; water supply handbook: 2.2. */
  RETURN_BEND_180(1.5),
  /** Tee, straight through. Water supply handbook: 0.60; Munson: 0.2 flanged, 0.9 threaded. */
  TEE_THROUGH(0.6),
  /** Tee, round the corner. Water supply handbook: 1.80; Munson: 1.0 flanged, 2.0 threaded. */
  TEE_BRANCH(1.8),
  /** Union. Munson: 0.08 threaded; other tables: 0.04. */
  UNION(0.08),
  /** Straight socket. Handbook tables without author: 0.04. */
  COUPLING(0.04),
  /** Ball valve fully open. Munson: 0.05; Crane: 3 fT = 0.07. */
  BALL_VALVE_OPEN(0.05),
  /** Gate valve fully open. Munson: 0.15. */
  GATE_VALVE_OPEN(0.15),
  /** Globe valve fully open. Munson: 10. */
  GLOBE_VALVE_OPEN(10.0),
  /** Angle valve fully open. Munson: 2. */
  ANGLE_VALVE_OPEN(2.0),
  /** Diaphragm valve fully open. Handbook tables without author: 2.3. */
  DIAPHRAGM_VALVE_OPEN(2.3),
  /**
   * Butterfly valve fully open. Crane: 45 fT = 1.0; a handbook table without author: 0.2 to 0.6.
   */
  BUTTERFLY_VALVE_OPEN(1.0),
  /** Swing check valve held open by the flow. Munson: 2; Crane: 50 fT to 100 fT (seen quoted). */
  SWING_CHECK(2.0),
  /** Lift or spring check valve. Crane: 600 fT = 13.8 (seen quoted); disc checks: 10. */
  LIFT_CHECK(13.8),
  /** Foot valve with its strainer. Handbook tables without author: 15; Crane: 75 fT to 420 fT. */
  FOOT_VALVE(15.0),
  /** Clean basket strainer. Common practice: 2; a dirty one has no upper limit. */
  STRAINER(2.0);

  private final double lossCoefficient;

  Fitting(double lossCoefficient) {
    this.lossCoefficient = lossCoefficient;
  }

  /** Loss coefficient K on the velocity head of the pipe, dimensionless, above 0. */
  public double lossCoefficient() {
    return lossCoefficient;
  }
}
