package dryfloor.analysis.hydraulics;

/**
 * How high the water would stand in a tube let into the wall of a pipe through which water flows.
 *
 * <p>The energy line falls along the pipe by what is lost on the way ({@link PipeLoss}); the
 * pressure line lies below it everywhere by the velocity head V²/2g, for that part of the energy is
 * in the motion (Bernoulli; any hydraulics text: Munson, Young and Okiishi, Fundamentals of Fluid
 * Mechanics, energy line and hydraulic grade line; from memory). Gauge pressure over ρg is the
 * pressure line less the elevation.
 *
 * <p>So inside a pipe the pressure line follows from either end, each time by friction and fittings
 * between the end and the point, and by one of the figures given here for the end itself. All are
 * in velocity heads of the pipe.
 */
public final class PressureLine {

  /**
   * How far the pressure line rises at the end by which the water leaves into open water or air:
   * not at all. The pressure there is that of the surroundings, and the loss at the exit is the
   * velocity head itself.
   */
  public static final double AT_OUTLET = 0.0;

  private PressureLine() {}

  /**
   * How far the pressure line lies below still water outside, just inside the end by which it
   * enters.
   *
   * @param entranceLoss loss coefficient of the entrance, 0 or more
   */
  public static double belowStillWater(double entranceLoss) {
    return entranceLoss + 1.0;
  }

  /** How far the pressure line lies below an energy line that is given at the same point. */
  public static double belowEnergyLine() {
    return 1.0;
  }
}
