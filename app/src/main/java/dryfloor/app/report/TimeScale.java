package dryfloor.app.report;

import java.util.ArrayList;
import java.util.List;

/**
 * A scale of time that shows the first seconds and the last days alike: even at first, then each
 * tenfold time as wide as the one before. The failure is at 0, the end at 1.
 *
 * @param duration from the failure to the end (s), positive
 */
public record TimeScale(double duration) {

  /** Up to about this time (s) the scale is even. */
  private static final double EVEN = 1;

  private static final double MINUTE = 60;
  private static final double HOUR = 3600;
  private static final double DAY = 24 * HOUR;

  /** Times (s) that people speak of, the plainest first. */
  private static final List<List<Double>> SPOKEN =
      List.of(
          List.of(1.0, 10.0, MINUTE, 10 * MINUTE, HOUR, DAY),
          List.of(5.0, 30.0, 30 * MINUTE, 6 * HOUR, 3 * DAY, 7 * DAY, 14 * DAY),
          List.of(2.0, 20.0, 5 * MINUTE, 3 * HOUR, 12 * HOUR, 2 * DAY, 4 * DAY, 10 * DAY),
          List.of(3.0, 2 * MINUTE, 20 * MINUTE, 2 * HOUR, 5 * DAY));

  /**
   * A scale for something that lasts so long.
   *
   * @throws IllegalArgumentException if the duration is not a positive number
   */
  public TimeScale {
    if (!(duration > 0) || Double.isInfinite(duration)) {
      throw new IllegalArgumentException("a scale of " + duration + " s; it needs more than 0 s");
    }
  }

  /** A mark at a time (s after the failure). */
  public record Tick(double time, String label) {}

  /** Where a time (s) lies, from 0 to 1; the end for what comes later. */
  public double share(double time) {
    return Math.log1p(Math.clamp(time, 0, duration) / EVEN) / Math.log1p(duration / EVEN);
  }

  /** The time (s) at a share of the scale. */
  public double time(double share) {
    return EVEN * Math.expm1(Math.clamp(share, 0, 1) * Math.log1p(duration / EVEN));
  }

  /**
   * Marks at times that people speak of, no two nearer than a share of the scale, in order.
   *
   * @param clearance from 0 to 1
   */
  public List<Tick> ticks(double clearance) {
    List<Double> times = new ArrayList<>(List.of(0.0));
    for (List<Double> spoken : SPOKEN) {
      for (double time : spoken) {
        boolean free =
            times.stream().allMatch(taken -> Math.abs(share(taken) - share(time)) >= clearance);
        if (time <= duration && free) {
          times.add(time);
        }
      }
    }
    return times.stream().sorted().map(time -> new Tick(time, label(time))).toList();
  }

  private static String label(double time) {
    if (time < MINUTE) {
      return whole(time) + " s";
    }
    if (time < HOUR) {
      return whole(time / MINUTE) + " min";
    }
    return time < DAY ? whole(time / HOUR) + " h" : whole(time / DAY) + " d";
  }

  private static String whole(double number) {
    return Long.toString(Math.round(number));
  }
}
