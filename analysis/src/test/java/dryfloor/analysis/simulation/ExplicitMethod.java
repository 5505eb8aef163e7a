package dryfloor.analysis.simulation;

import org.hipparchus.ode.nonstiff.AdaptiveStepsizeIntegrator;
import org.hipparchus.ode.nonstiff.DormandPrince54Integrator;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.hipparchus.ode.nonstiff.GraggBulirschStoerIntegrator;
import org.hipparchus.ode.nonstiff.HighamHall54Integrator;

/**
 * Which explicit integrator, and how exact.
 *
 * @param kind of integrator
 * @param tolerance of one step, for what passes over each account: absolute (m³) and relative
 * @param moment to which events are found (s)
 */
public record ExplicitMethod(Kind kind, double tolerance, double moment) {

  /** As exact as is of use: 0.1 mm³ a step, events to a tenth of a nanosecond. */
  public static final ExplicitMethod EXACT =
      new ExplicitMethod(Kind.DORMAND_PRINCE_853, 1e-10, 1e-10);

  /** Explicit integrators of embedded pairs and of extrapolation. */
  public enum Kind {
    HIGHAM_HALL_54(2.8),
    DORMAND_PRINCE_54(3),
    DORMAND_PRINCE_853(5.5),
    GRAGG_BULIRSCH_STOER(Double.POSITIVE_INFINITY);

    /** Length of the negative real axis on which a step damps, less a margin. */
    private final double reach;

    Kind(double reach) {
      this.reach = reach;
    }
  }

  double reach() {
    return kind.reach;
  }

  AdaptiveStepsizeIntegrator make(double shortest) {
    double longest = Double.POSITIVE_INFINITY;
    return switch (kind) {
      case HIGHAM_HALL_54 -> new HighamHall54Integrator(shortest, longest, tolerance, tolerance);
      case DORMAND_PRINCE_54 ->
          new DormandPrince54Integrator(shortest, longest, tolerance, tolerance);
      case DORMAND_PRINCE_853 ->
          new DormandPrince853Integrator(shortest, longest, tolerance, tolerance);
      case GRAGG_BULIRSCH_STOER ->
          new GraggBulirschStoerIntegrator(shortest, longest, tolerance, tolerance);
    };
  }

  void limit(AdaptiveStepsizeIntegrator integrator, double shortest, double longest) {
    integrator.setStepSizeControl(shortest, longest, tolerance, tolerance);
  }
}
