package dryfloor.analysis.simulation;

import java.util.List;
import java.util.function.DoubleSupplier;

/**
 * What ends a mode.
 *
 * @param what happens then, for the message when it happens without end
 * @param gauge above zero while the mode lasts; read from the field as it was evaluated last
 * @param action what is done when it is no longer
 * @param unhurried whether the end of the step in which it became due is soon enough, so that
 *     nobody looks for the moment
 */
record Trigger(String what, DoubleSupplier gauge, Runnable action, boolean unhurried) {

  /** What happens at its moment. */
  Trigger(String what, DoubleSupplier gauge, Runnable action) {
    this(what, gauge, action, false);
  }

  /** What may wait for the end of a step: nothing moves otherwise for it. */
  static Trigger unhurried(String what, DoubleSupplier gauge, Runnable action) {
    return new Trigger(what, gauge, action, true);
  }

  boolean isDue() {
    return gauge.getAsDouble() <= 0;
  }

  /** Whether a step must end where it became due. */
  boolean endsStep() {
    return !unhurried && isDue();
  }

  /** What of some triggers is due. */
  enum Due {
    NOTHING,
    /** Something that may wait for the end of the step. */
    UNHURRIED,
    /** Something for which a step must end where it became due. */
    ENDS_STEP
  }

  static Due due(List<Trigger> triggers) {
    Due due = Due.NOTHING;
    for (Trigger trigger : triggers) {
      if (trigger.isDue()) {
        if (!trigger.unhurried) {
          return Due.ENDS_STEP;
        }
        due = Due.UNHURRIED;
      }
    }
    return due;
  }

  /** The lowest of their gauges: the first to fall through zero makes it do so. */
  static double least(List<Trigger> triggers) {
    double least = Double.POSITIVE_INFINITY;
    for (Trigger trigger : triggers) {
      least = Math.min(least, trigger.gauge().getAsDouble());
    }
    return least;
  }
}
