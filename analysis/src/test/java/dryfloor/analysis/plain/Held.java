package dryfloor.analysis.plain;

/** Water that a device keeps only while its pump runs. */
final class Held {

  final Pipe pipe;
  final double capacity;
  double inside;

  Held(Pipe pipe, double capacity) {
    this.pipe = pipe;
    this.capacity = capacity;
  }

  /** Positive while it fills from what passes, negative while it gives back (m³/s). */
  double filling(double seconds) {
    return pipe.flowFrom > 1e-9
        ? Math.clamp((capacity - inside) / seconds, 0, Math.max(0, pipe.flowTo))
        : -Math.min(inside / seconds, capacity / 2);
  }
}
