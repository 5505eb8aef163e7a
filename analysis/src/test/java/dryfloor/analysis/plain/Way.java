package dryfloor.analysis.plain;

import java.util.function.BooleanSupplier;

/**
 * A way for water between two places that is no pipe.
 *
 * @param intake elevation below which it takes nothing from the first place (m)
 */
record Way(
    Kind kind,
    String id,
    Place from,
    Place to,
    double intake,
    double size,
    double crestHeightFrom,
    double crestHeightTo,
    BooleanSupplier works) {

  /** How water goes. */
  enum Kind {
    /** Over an edge; size is its length. */
    WEIR,
    RIM,
    SILL,
    /** Through a hole; size is its area. */
    LEAK,
    /** At a fixed rate; size is the flow. */
    THROWN,
    /** A wall is gone: all that is there leaves in seconds, and all that comes at once. */
    LOST
  }

  /** What a drowned edge holds apart by less than this counts as one pool (m). */
  private static final double EVEN = 1e-4;

  /** Depth over an edge from which on it can count as drowned (m). */
  private static final double DROWNED = 2e-3;

  static Way over(Kind kind, String id, Place from, Place to, double crest, double length) {
    return new Way(
        kind, id, from, to, crest, length, crest - from.bottom, crest - to.bottom, () -> true);
  }

  /** Flow from the first to the second place (m³/s). */
  double flow() {
    double upstream = from.level() - intake;
    double downstream = to.level() - intake;
    return switch (kind) {
      case WEIR, RIM, SILL ->
          Laws.weir(upstream, downstream, size, crestHeightFrom)
              - Laws.weir(downstream, upstream, size, crestHeightTo);
      case LEAK -> {
        double difference = Math.max(0, upstream) - Math.max(0, downstream);
        yield Math.signum(difference) * Laws.hole(size, Math.abs(difference));
      }
      case THROWN -> works.getAsBoolean() && upstream > 0 ? size : 0;
      case LOST -> upstream > 5e-3 ? Laws.hole(size, upstream) : 1e3;
    };
  }

  /** Whether it leads over a drowned edge from one pool into the same pool. */
  boolean isWithinAPool() {
    return switch (kind) {
      case WEIR, RIM, SILL ->
          to.kind != Place.Kind.OUTSIDE
              && Math.min(from.level(), to.level()) > intake + DROWNED
              && Math.abs(from.level() - to.level()) < EVEN;
      case LEAK, THROWN, LOST -> false;
    };
  }

  /** The most that can pass before its pool comes apart (m³/s). */
  double mostWithinAPool() {
    double upstream = Math.max(from.level(), to.level()) - intake;
    return Laws.weir(upstream, upstream - EVEN, size, Math.max(crestHeightFrom, crestHeightTo));
  }
}
