package dryfloor.analysis.outcome;

import java.util.Arrays;
import java.util.List;

/**
 * Levels over time, straight between the recorded moments, and the mean flows between them.
 *
 * <p>Immutable; one row of levels for each recorded moment, one column for each place.
 */
public final class Trajectory {

  private final List<String> places;
  private final double[] times;
  private final double[][] levels;
  private final Flows flows;

  /**
   * Keeps copies of the arrays.
   *
   * @param places ids of vessels and floors, one for each column
   * @param times rising moments (s)
   * @param levels elevation of the water (m) by moment and place
   * @param flows between the moments
   */
  public Trajectory(List<String> places, double[] times, double[][] levels, Flows flows) {
    this.flows = flows;
    this.places = List.copyOf(places);
    this.times = times.clone();
    this.levels = Arrays.stream(levels).map(double[]::clone).toArray(double[][]::new);
  }

  public List<String> places() {
    return places;
  }

  public int moments() {
    return times.length;
  }

  /** Time of a recorded moment (s). */
  public double time(int moment) {
    return times[moment];
  }

  /** Level (m) of a place at a recorded moment. */
  public double level(int moment, String place) {
    return levels[moment][column(place)];
  }

  /** Level (m) of a place at any time between the first and the last moment. */
  public double levelAt(double time, String place) {
    int column = column(place);
    int found = Arrays.binarySearch(times, time);
    if (found >= 0) {
      return levels[found][column];
    }
    int after = Math.clamp(-found - 1, 1, Math.max(1, times.length - 1));
    if (times.length == 1) {
      return levels[0][column];
    }
    double share = Math.clamp((time - times[after - 1]) / (times[after] - times[after - 1]), 0, 1);
    return levels[after - 1][column] * (1 - share) + levels[after][column] * share;
  }

  /** What flows at a time: the mean of the span between recorded moments in which it lies. */
  public List<Flows.Flow> flowsAt(double time) {
    int found = Arrays.binarySearch(times, time);
    return flows.in(Math.clamp(found >= 0 ? found : -found - 2, 0, times.length));
  }

  private int column(String place) {
    int column = places.indexOf(place);
    if (column < 0) {
      throw new IllegalArgumentException(
          "no place is called '" + place + "'; there are " + String.join(", ", places));
    }
    return column;
  }
}
