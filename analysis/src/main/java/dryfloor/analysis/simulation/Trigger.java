package dryfloor.analysis.simulation;

import java.util.List;
import java.util.function.DoubleSupplier;

/**
 * What ends a mode.
 *
 * @param what happens then, for the message when it happens without end
 * @param gauge above zero while the mode lasts; read from the field as it was evaluated last
 * @param action what is done when it is no longer
 */
record Trigger(String what, DoubleSupplier gauge, Runnable action) {

  boolean isDue() {
    return gauge.getAsDouble() <= 0;
  }

  static boolean anyDue(List<Trigger> triggers) {
    for (Trigger trigger : triggers) {
      if (trigger.isDue()) {
        return true;
      }
    }
    return false;
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
