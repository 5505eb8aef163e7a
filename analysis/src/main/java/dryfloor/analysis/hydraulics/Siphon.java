package dryfloor.analysis.hydraulics;

/** When a pipe that runs over a crest holds its water column, and when air parts it. */
public final class Siphon {

  /**
   * Area of a hole over area of the bore from which on a siphon break is taken to work: a 3 mm hole
   * in a 25 mm bore.
   */
  public static final double CERTAIN_FROM_SHARE = (3.0 / 25.0) * (3.0 / 25.0);

  /** Area of a hole over area of the bore below which it is taken to let in bubbles only. */
  public static final double TOO_SMALL_BELOW_SHARE = CERTAIN_FROM_SHARE / 4.0;

  /**
   * Widest bore out of which no air lets the water fall that hangs in it over an open lower end, m:
   * 1.84 times the capillary length of 2.7 mm to either side. Rayleigh–Taylor stability of a
   * meniscus in an upright tube, from memory.
   */
  public static final double HANGS_IN = 0.01;

  /** So that a hole drawn at exactly a limit is not pushed below it by the rounding of areas. */
  private static final double ROUNDING = 1.0 + 1e-9;

  private static final double SELF_VENTING_FROUDE = 0.3;

  private Siphon() {}

  /** What is to be expected of a siphon break of a given size. */
  public enum BreakHole {
    /** Air breaks the column as soon as the hole is uncovered. */
    CERTAIN,
    /** It may or may not: look at both courses and let the worse one decide. */
    IN_DOUBT,
    /** Bubbles pass along with the water and the siphon runs on. */
    TOO_SMALL
  }

  /**
   * Greatest height of a crest above the upstream surface at which water still hangs together, m:
   *
   * <pre>(p_atm − p_v) / (ρ g) − (velocity head at the crest + losses up to it)</pre>
   *
   * <p>Energy balance, any textbook (Munson, Young and Okiishi, Fundamentals of Fluid Mechanics,
   * example 3.10). At the standard atmosphere; water holding dissolved air parts somewhat sooner.
   *
   * @param crestVelocityHeadAndLosses m, 0 or more
   * @param water its density and vapour pressure
   */
  public static double highestCrest(double crestVelocityHeadAndLosses, Water water) {
    double hangs = Physical.ATMOSPHERE - water.vapourPressure();
    return hangs / (water.density() * Physical.GRAVITY) - crestVelocityHeadAndLosses;
  }

  /**
   * Velocity from which on water carries an air pocket down out of a falling pipe, m/s:
   *
   * <pre>V = √(g D) · (0.825 + 0.25 √(sin θ))</pre>
   *
   * <p>Wisner, Mohsen and Kouwen, Journal of the Hydraulics Division ASCE 101 HY2 (1975), a
   * conservative envelope of tests on large pipes; small tubes may clear sooner or later.
   *
   * @param diameter bore, m
   * @param slopeFromHorizontalRadians 0 level to π/2 upright
   */
  public static double airClearingVelocity(double diameter, double slopeFromHorizontalRadians) {
    return Math.sqrt(Physical.GRAVITY * diameter)
        * (0.825 + 0.25 * Math.sqrt(Math.sin(slopeFromHorizontalRadians)));
  }

  /**
   * Greatest flow that an upright overflow pipe carries with air passing freely beside it, m³/s,
   * from
   *
   * <pre>4 Q / (π D² √(g D)) = 0.3</pre>
   *
   * <p>Hills, Designing Piping for Gravity Flow, Chemical Engineering, 5 September 1983. Above it
   * the flow surges, draws air along and gurgles, until it runs full.
   *
   * @param diameter bore, m
   */
  public static double selfVentingFlow(double diameter) {
    return SELF_VENTING_FROUDE
        * Physical.areaOfBore(diameter)
        * Math.sqrt(Physical.GRAVITY * diameter);
  }

  /**
   * Flow from which on an upright pipe fills into which water falls over a drowned lip, m³/s.
   *
   * <p>Between the flow at which air no longer passes freely beside the water ({@link
   * #selfVentingFlow}) and that at which the water certainly carries it down ({@link
   * #airClearingVelocity}) no published rule says whether it fills: both limits are other people's,
   * that the doubt lies between them is common practice.
   *
   * @param diameter bore, m
   * @param early the least flow at which it may fill, not that at which it certainly does
   */
  public static double primingFlow(double diameter, boolean early) {
    return early
        ? selfVentingFlow(diameter)
        : airClearingVelocity(diameter, Math.PI / 2) * Physical.areaOfBore(diameter);
  }

  /**
   * Whether a hole of this size breaks a siphon in a pipe of this bore.
   *
   * <p>No published rule or data for the size were found. Common practice: a hole of 3 mm in a bore
   * of 25 mm (1.44 % of its area) or larger works; below a quarter of that share it is held to be
   * too small; between them it is in doubt. Two limits hold whatever the rule: without a hole the
   * siphon runs down to its inlet, and with a large one it ends when the level reaches the hole.
   * Holes clog: this speaks of a clean one.
   *
   * @param holeArea m², 0 for none
   * @param pipeArea of the bore, m², above 0
   */
  public static BreakHole breakHole(double holeArea, double pipeArea) {
    double share = holeArea / pipeArea * ROUNDING;
    if (share >= CERTAIN_FROM_SHARE) {
      return BreakHole.CERTAIN;
    }
    return share < TOO_SMALL_BELOW_SHARE ? BreakHole.TOO_SMALL : BreakHole.IN_DOUBT;
  }
}
