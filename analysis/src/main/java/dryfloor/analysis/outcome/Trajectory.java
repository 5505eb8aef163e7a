package dryfloor.analysis.outcome;

import java.util.ArrayList;
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
   * A way that water can take; a flow along it counts as positive.
   *
   * @param path id of the run, weir, vessel or floor
   * @param kind how it goes
   * @param from id of the place that gives
   * @param to id of the place that takes
   */
  public record Way(String path, Ledger.Way kind, String from, String to) {}

  /**
   * A flow at some moment.
   *
   * @param from id of the place that gives
   * @param to id of the place that takes
   * @param rate (m³/s), positive
   */
  public record Flow(String path, Ledger.Way kind, String from, String to, double rate) {}

  /**
   * Mean flows between the recorded moments.
   *
   * @param ways one for each column
   * @param rates (m³/s), one row for each span between two moments; not to be changed any more
   */
  public record Flows(List<Way> ways, List<float[]> rates) {

    /** Nothing is known of flows. */
    public static final Flows NONE = new Flows(List.of(), List.of());

    public Flows {
      ways = List.copyOf(ways);
      rates = List.copyOf(rates);
    }
  }

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
  public List<Flow> flowsAt(double time) {
    if (flows.rates().isEmpty()) {
      return List.of();
    }
    int found = Arrays.binarySearch(times, time);
    int span = found >= 0 ? found : -found - 2;
    float[] rates = flows.rates().get(Math.clamp(span, 0, flows.rates().size() - 1));
    List<Flow> now = new ArrayList<>();
    for (int i = 0; i < rates.length; i++) {
      Way way = flows.ways().get(i);
      if (rates[i] > 0) {
        now.add(new Flow(way.path(), way.kind(), way.from(), way.to(), rates[i]));
      } else if (rates[i] < 0) {
        now.add(new Flow(way.path(), way.kind(), way.to(), way.from(), -rates[i]));
      }
    }
    return List.copyOf(now);
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
