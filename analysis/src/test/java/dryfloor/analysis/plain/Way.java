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
}
