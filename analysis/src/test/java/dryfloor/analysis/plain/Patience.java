package dryfloor.analysis.plain;

import java.lang.management.ManagementFactory;

/**
 * How long the plain simulator may take over one failure.
 *
 * @param steps at most
 * @param seconds at most, of the processor; what is given up for that may be finished on a faster
 *     machine
 */
record Patience(int steps, double seconds) {

  /** The same on every machine. */
  static Patience ofSteps(int steps) {
    return new Patience(steps, Double.POSITIVE_INFINITY);
  }

  /** Nanoseconds that the processor has spent on this thread. */
  static long clock() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  boolean isAtItsEnd(int stepsTaken, long started) {
    return stepsTaken >= steps || (clock() - started) * 1e-9 > seconds;
  }
}
