package dryfloor.analysis.hydraulics;

/** Finds the flow that a given head drives through a pipe, by halving; slow and sure. */
final class PipeFlow {

  private PipeFlow() {}

  static double under(
      double head,
      double diameter,
      double length,
      double roughness,
      double fittings,
      double kinematicViscosity) {
    double less = 0.0;
    double more = 10.0;
    for (int i = 0; i < 100; i++) {
      double middle = 0.5 * (less + more);
      if (PipeLoss.head(middle, diameter, length, roughness, fittings, kinematicViscosity) < head) {
        less = middle;
      } else {
        more = middle;
      }
    }
    return more;
  }
}
