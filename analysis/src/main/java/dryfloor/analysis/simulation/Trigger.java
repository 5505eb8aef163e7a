package dryfloor.analysis.simulation;

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
}
