package dryfloor.analysis.simulation;

import dryfloor.analysis.simulation.Trigger.Due;
import java.util.List;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;
import org.hipparchus.ode.nonstiff.AdaptiveStepsizeIntegrator;

/**
 * Takes the water on with an explicit integrator and the event detection of a general library. Of
 * the engine it uses the flows, the triggers and what these switch; the step in time, its error
 * control and the search for the moment of an event are the library's.
 *
 * <p>The unknowns are what has passed over each account since the step began, so the volumes keep
 * all water whatever the integrator does.
 */
final class ExplicitStepper implements Stepper {

  /** So many steps of the integrator are handed to the simulation as one. */
  private static final int STEPS_AT_ONCE = 8;

  /** A root of the least gauge that the library found lies no more than this before it (s). */
  private static final double WITHIN_THE_MOMENT = 1e-6;

  private static final double SHORTEST = 1e-13;
  private static final double SMALLEST_LIMIT = 1e-9;
  private static final int MOST_TRIES = 200;

  private final State state;
  private final FlowField field;
  private final ExplicitMethod method;
  private final AdaptiveStepsizeIntegrator integrator;
  private final Slopes slopes = new Slopes();
  private final double[] volumes;
  private final LowestGauge lowestGauge;
  private List<Trigger> triggers = List.of();
  private double lastLength;
  private int stepsTaken;

  ExplicitStepper(State state, FlowField field, ExplicitMethod method) {
    this.state = state;
    this.field = field;
    this.method = method;
    volumes = new double[state.volumes.length];
    lowestGauge = new LowestGauge(method.moment());
    integrator = method.make(SHORTEST);
    integrator.addEventDetector(lowestGauge);
    integrator.addStepEndHandler((end, forward) -> countStep());
    integrator.addStepHandler(
        step ->
            lastLength =
                Math.max(
                    lastLength,
                    step.getCurrentState().getTime() - step.getPreviousState().getTime()));
  }

  private Action countStep() {
    stepsTaken++;
    return stepsTaken < STEPS_AT_ONCE ? Action.CONTINUE : Action.STOP;
  }

  @Override
  public void begin() {
    field.evaluate(state.volumes);
  }

  @Override
  public Step advance(double longest, List<Trigger> watched) {
    triggers = watched;
    field.evaluate(state.volumes, slopes);
    double[] gainsBefore = field.gains.clone();
    ODEStateAndDerivative end = integrate(longest);
    double[] moved = end.getPrimaryState();
    double length = end.getTime() + untilDue(moved, end.getTime() < longest);
    Crossing within =
        new Crossing(
            state.volumes.clone(), gainsBefore, volumes.clone(), field.gains.clone(), length);
    boolean due = Trigger.due(triggers) != Due.NOTHING;
    return new Step(length, moved, volumes, within, due, Double.POSITIVE_INFINITY);
  }

  /**
   * Integrates for so long at most. Where the stages of a step run away to levels that no water
   * has, it is tried again with shorter ones.
   */
  private ODEStateAndDerivative integrate(double longest) {
    double[] teeHeads = state.teeHeads.clone();
    double limit = stableStep();
    double first = lastLength > 0 ? lastLength : limit;
    while (limit > SMALLEST_LIMIT) {
      System.arraycopy(teeHeads, 0, state.teeHeads, 0, teeHeads.length);
      method.limit(integrator, SHORTEST, limit);
      integrator.setInitialStepSize(Math.min(Math.min(first, limit), longest));
      lastLength = 0;
      stepsTaken = 0;
      try {
        return integrator.integrate(
            new Water(), new ODEState(0, new double[field.flows.length]), longest);
      } catch (MathIllegalStateException | NoAnswer ranAway) {
        limit = Math.min(first, limit) / 8;
      }
    }
    throw new NoAnswer("no explicit step was small enough at " + state.time + " s");
  }

  /** A root may be found a hair before the gauge is through: goes on by that hair (s). */
  private double untilDue(double[] moved, boolean stopped) {
    read(moved);
    double on = 0;
    boolean atRoot = stopped && stepsTaken < STEPS_AT_ONCE;
    for (double dt = 1e-11;
        atRoot && on < WITHIN_THE_MOMENT && Trigger.due(triggers) == Due.NOTHING;
        dt *= 2) {
      for (int a = 0; a < moved.length; a++) {
        moved[a] += dt * field.flows[a];
      }
      on += dt;
      read(moved);
    }
    return on;
  }

  private void read(double[] moved) {
    System.arraycopy(state.volumes, 0, volumes, 0, volumes.length);
    field.ends.move(moved, volumes);
    field.evaluate(volumes);
    lowestGauge.forget();
  }

  /**
   * The longest step (s) that damps what dies out fastest. Left to its error control alone, an
   * explicit method keeps such water trembling for ever, and nothing would come to rest. Most often
   * a small place beside large ones is the fastest, and the rate at which its inflow answers to its
   * own level the eigenvalue; it can be up to twice that (Gershgorin, by columns: what leaves one
   * place arrives at another), and then the error control holds.
   */
  private double stableStep() {
    double[] rates = new double[volumes.length];
    for (int entry = 0; entry < slopes.size(); entry++) {
      int place = slopes.place(entry);
      if (!field.isFullTee(place)) {
        double rate = slopes.value(entry) / field.areas[place];
        rates[place] += field.ends.from[slopes.slot(entry)] == place ? rate : 0;
        rates[place] -= field.ends.to[slopes.slot(entry)] == place ? rate : 0;
      }
    }
    double fastest = 0;
    for (double rate : rates) {
      fastest = Math.max(fastest, rate);
    }
    return method.reach() / Math.max(fastest, 1e-9);
  }

  /** The engine's flows, as the derivatives of what has passed over each account. */
  private final class Water implements OrdinaryDifferentialEquation {

    @Override
    public int getDimension() {
      return field.flows.length;
    }

    @Override
    public double[] computeDerivatives(double time, double[] moved) {
      read(moved);
      return field.flows.clone();
    }
  }

  /** The lowest gauge of all triggers: below zero from the moment on at which the first is due. */
  private final class LowestGauge implements ODEEventDetector {

    private final BracketingNthOrderBrentSolver solver;
    private double readAt = Double.NaN;

    LowestGauge(double moment) {
      solver = new BracketingNthOrderBrentSolver(0, moment, 0, 5);
    }

    void forget() {
      readAt = Double.NaN;
    }

    @Override
    public double g(ODEStateAndDerivative at) {
      if (readAt != at.getTime()) {
        read(at.getPrimaryState());
        readAt = at.getTime();
      }
      double least = Math.clamp(Trigger.least(triggers), -1, 1);
      return least > 0 ? least : Math.min(least, -1e-300);
    }

    @Override
    public AdaptableInterval getMaxCheckInterval() {
      return AdaptableInterval.of(Double.POSITIVE_INFINITY);
    }

    @Override
    public int getMaxIterationCount() {
      return MOST_TRIES;
    }

    @Override
    public BracketingNthOrderBrentSolver getSolver() {
      return solver;
    }

    @Override
    public ODEEventHandler getHandler() {
      return (at, detector, increasing) -> Action.STOP;
    }
  }
}
