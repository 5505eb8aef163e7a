package dryfloor.analysis.simulation;

import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.simulation.Trigger.Due;
import java.util.List;

/** Takes steps as long as the error of a {@link VolumeStep} allows, cut short where one is due. */
final class ImplicitStepper implements Stepper {

  /** Something that happened is found in time to this (s). */
  private static final double MOMENT = 5e-4;

  private static final int MOST_CUTS = 12;
  private static final int MOST_FALSE_ALARMS = 10;
  private static final double SMALLEST_STEP = 1e-9;

  /** So many steps alike to this share are no chance; the next is as much shorter. */
  private static final int CAUGHT_AFTER = 20;

  private static final double SAME = 1e-3;
  private static final double LET_GO = 0.05;

  private final State state;
  private final FlowField field;
  private final VolumeStep step;
  private final Whereabouts whereabouts;

  /**
   * How often in a row a step was cut short for something that then did not happen: the shorter
   * step tells otherwise than the longer one. Each time the next one is cut less short.
   */
  private int falseAlarms;

  /** How often in a row a step was made as much shorter as the one before. */
  private int sameAgain;

  private double lastLength;

  /** What of the triggers is due at the end of the step. */
  private Due due = Due.NOTHING;

  private Slopes slopes = new Slopes();
  private Slopes slopesAtEnd = new Slopes();
  private final double[] between;

  ImplicitStepper(FlowNetwork network, State state, FlowField field, Accuracy accuracy) {
    this.state = state;
    this.field = field;
    step = new VolumeStep(network, field, accuracy);
    whereabouts = new Whereabouts(network, state, field);
    between = new double[network.places().size()];
  }

  @Override
  public void begin() {
    field.evaluate(state.volumes, slopes);
    step.start();
  }

  /**
   * Whether steps of one length lead from each state to the same again. Flow through fittings goes
   * with the root of a head, so near no head at all a step may end as far on one side of rest as it
   * began on the other, and the error never tells. A much shorter one comes to rest.
   */
  private boolean isCaught() {
    return sameAgain >= CAUGHT_AFTER;
  }

  @Override
  public Step advance(double longest, List<Trigger> triggers) {
    double h = isCaught() ? Math.min(longest, lastLength * LET_GO) : longest;
    double error = tryStep(h);
    boolean rejected = error > 1;
    while (error > 1) {
      h *= Math.max(0.1, 0.8 * Math.pow(error, -1.0 / 3));
      if (h < SMALLEST_STEP) {
        throw new NoAnswer("no step was small enough; " + whereabouts.now());
      }
      error = tryStep(h);
    }
    double next = h * Math.min(6, 0.85 * Math.pow(Math.max(error, 1e-9), -1.0 / 3));
    h = untilDue(h, triggers);
    sameAgain = rejected && Math.abs(h - lastLength) < SAME * h ? sameAgain + 1 : 0;
    lastLength = h;
    Step taken =
        new Step(
            h,
            step.moved,
            step.volumes,
            within(h),
            due != Due.NOTHING,
            Math.max(next, SMALLEST_STEP * 10));
    Slopes swapped = slopes;
    slopes = slopesAtEnd;
    slopesAtEnd = swapped;
    step.start();
    return taken;
  }

  /**
   * Cuts a step short where the first of the triggers that became due in it did so; returns its
   * length. The moment is found on the cubic of the step, and again on that of the shorter one,
   * until the step ends there.
   */
  private double untilDue(double tried, List<Trigger> triggers) {
    double h = tried;
    boolean cut = false;
    due = Trigger.due(triggers);
    for (int cuts = 0; cuts < MOST_CUTS && h > MOMENT && due == Due.ENDS_STEP; cuts++) {
      double moment = h * shareUntilDue(h, triggers);
      if (h - moment <= MOMENT) {
        tryStep(h);
        break;
      }
      h = Math.clamp(moment, Math.min(h, MOMENT * (1L << falseAlarms)), h);
      while (tryStep(h) > 1 && h > SMALLEST_STEP) {
        h /= 2;
      }
      cut = true;
      due = Trigger.due(triggers);
    }
    falseAlarms = cut && due != Due.ENDS_STEP ? Math.min(falseAlarms + 1, MOST_FALSE_ALARMS) : 0;
    return h;
  }

  private double tryStep(double h) {
    return step.take(state.volumes, slopes, h, slopesAtEnd);
  }

  /** Share of the step after which the first of the triggers that are due became so. */
  private double shareUntilDue(double h, List<Trigger> triggers) {
    List<Trigger> endStep = triggers.stream().filter(Trigger::endsStep).toList();
    Crossing within = within(h);
    double atEnd = Trigger.least(endStep);
    field.evaluate(state.volumes);
    double atStart = Trigger.least(endStep);
    return Crossing.find(
        share -> {
          within.volumes(share, between);
          field.evaluate(between);
          return Trigger.least(endStep);
        },
        Math.max(atStart, 1e-300),
        atEnd,
        Math.min(1, MOMENT / h));
  }

  private Crossing within(double h) {
    return new Crossing(
        state.volumes.clone(), step.gains.clone(), step.volumes.clone(), field.gains.clone(), h);
  }
}
