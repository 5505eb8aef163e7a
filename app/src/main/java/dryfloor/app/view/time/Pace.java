package dryfloor.app.view.time;

import dryfloor.app.report.TimeScale;

/**
 * How fast a failure is played: evenly along the scale, so that its first seconds can be followed
 * and its days do not bore.
 *
 * @param scale that it runs along
 * @param length of the whole play (s)
 */
public record Pace(TimeScale scale, double length) {

  /** The moment (s after the failure) that is reached a while (s) after another. */
  public double after(double moment, double elapsed) {
    return scale.time(scale.share(moment) + elapsed / length);
  }

  /** Whether a moment (s after the failure) is the last. */
  public boolean isOver(double moment) {
    return scale.share(moment) >= 1 - 1e-9;
  }
}
