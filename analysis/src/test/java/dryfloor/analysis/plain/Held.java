package dryfloor.analysis.plain;

import java.util.Optional;

/**
 * Water that a device keeps only while its pump runs.
 *
 * <p>Its pump fills it with what passes. It gives back to where its run begins; where the run has
 * come apart before it, what is in it comes out of the open end.
 */
final class Held {

  /** In this time it takes up its water or gives it back (s); no law says, as in the engine. */
  private static final double TAKES = 60;

  final Pipe pipe;
  final double capacity;
  private final Node returnsTo;
  private final Optional<Fixture.Pump> fedBy;
  double inside;

  /**
   * Of a device.
   *
   * @param pipe that it sits in
   * @param returnsTo where its water comes out again
   * @param fedBy the pump that still feeds it
   */
  Held(Pipe pipe, double capacity, Node returnsTo, Optional<Fixture.Pump> fedBy) {
    this.pipe = pipe;
    this.capacity = capacity;
    this.returnsTo = returnsTo;
    this.fedBy = fedBy;
  }

  boolean isFed() {
    return fedBy.isPresent() && fedBy.get().lifts();
  }

  /** Positive while it fills from what passes, negative while it gives back (m³/s). */
  double filling(double seconds) {
    double most = capacity / TAKES;
    return isFed()
        ? Math.clamp((capacity - inside) / seconds, 0, Math.min(most, Math.max(0, pipe.flowTo)))
        : -Math.min(inside / seconds, most);
  }

  /** What it takes up does not come out at the end of its pipe; a tee there passes on the rest. */
  Node other(double filling) {
    return filling > 0 && pipe.to.node() instanceof Place arrivesAt ? arrivesAt : returnsTo;
  }
}
