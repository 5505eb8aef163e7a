package dryfloor.analysis.outcome;

import java.util.ArrayList;
import java.util.List;

/**
 * Flows over time, each span between two recorded moments having its mean. Kept as changes from
 * span to span, for most flows stay as they are for long.
 *
 * <p>Immutable; the arrays that it is given are not to be changed any more.
 */
public final class Flows {

  /** Nothing is known of flows. */
  public static final Flows NONE = new Flows(List.of(), List.of(), List.of());

  private final List<Way> ways;
  private final List<int[]> changed;
  private final List<float[]> rates;

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
   * Flows along these ways, all still at first.
   *
   * @param changed for each span, which ways have another flow than in the span before
   * @param rates for each span, what they are then (m³/s)
   */
  public Flows(List<Way> ways, List<int[]> changed, List<float[]> rates) {
    this.ways = List.copyOf(ways);
    this.changed = List.copyOf(changed);
    this.rates = List.copyOf(rates);
  }

  /** What flows in a span, counted from 0; in the last one where there are not so many. */
  List<Flow> in(int span) {
    float[] present = new float[ways.size()];
    for (int s = 0; s <= Math.min(span, changed.size() - 1); s++) {
      for (int i = 0; i < changed.get(s).length; i++) {
        present[changed.get(s)[i]] = rates.get(s)[i];
      }
    }
    List<Flow> flows = new ArrayList<>();
    for (int i = 0; i < present.length; i++) {
      Way way = ways.get(i);
      if (present[i] > 0) {
        flows.add(new Flow(way.path(), way.kind(), way.from(), way.to(), present[i]));
      } else if (present[i] < 0) {
        flows.add(new Flow(way.path(), way.kind(), way.to(), way.from(), -present[i]));
      }
    }
    return List.copyOf(flows);
  }
}
