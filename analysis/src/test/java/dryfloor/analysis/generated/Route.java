package dryfloor.analysis.generated;

import dryfloor.analysis.installation.RunPlan;
import java.util.List;

/**
 * The way of a run up and down, with pipe enough for it.
 *
 * @param elevations of its ends and of every crest and low point between them (m)
 * @param level pipe that each stretch has besides its climb (m)
 */
record Route(List<Double> elevations, double level) {

  static Route of(double level, Double... elevations) {
    return new Route(List.of(elevations), level);
  }

  /** Pipe from the first end to a point (m). */
  double along(int point) {
    double along = 0;
    for (int i = 1; i <= point; i++) {
      along += level + Math.abs(elevations.get(i) - elevations.get(i - 1));
    }
    return along;
  }

  double length() {
    return along(elevations.size() - 1);
  }

  /** Gives a run its length and its turning points. */
  RunPlan lay(RunPlan run) {
    for (int i = 1; i < elevations.size() - 1; i++) {
      run.by(elevations.get(i), along(i));
    }
    return run.length(length());
  }
}
