package dryfloor.analysis.failure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** From when to when each circuit is without power, by any of several failures. */
final class Outages {

  private record Outage(double from, double to) {}

  private final Map<String, List<Outage>> byCircuit = new TreeMap<>();

  // Of the failure that is being entered: when each circuit went out, and when that is over at
  // last.
  private final Map<String, Double> open = new HashMap<>();
  private double over = Double.POSITIVE_INFINITY;

  /** A circuit goes out at a time, until it comes back or the failure is over (s). */
  void off(String circuit, double time, double failureIsOver) {
    over = failureIsOver;
    if (time < failureIsOver) {
      open.putIfAbsent(circuit, time);
    }
  }

  /** A circuit that went out by the same failure comes back. */
  void on(String circuit, double time) {
    Double from = open.remove(circuit);
    if (from != null) {
      enter(circuit, from, Math.min(time, over));
    }
  }

  /** All that the failure does has been entered; what is still out comes back when it is over. */
  void close() {
    open.forEach((circuit, from) -> enter(circuit, from, over));
    open.clear();
    over = Double.POSITIVE_INFINITY;
  }

  private void enter(String circuit, double from, double to) {
    if (from < to) {
      byCircuit.computeIfAbsent(circuit, id -> new ArrayList<>()).add(new Outage(from, to));
    }
  }

  /** Circuits going out and coming back, outages that overlap or follow at once taken as one. */
  List<Effect> effects() {
    List<Effect> effects = new ArrayList<>();
    byCircuit.forEach((circuit, outages) -> add(circuit, outages, effects));
    return effects;
  }

  private static void add(String circuit, List<Outage> outages, List<Effect> effects) {
    List<Outage> joined = new ArrayList<>();
    for (Outage next : outages.stream().sorted(Comparator.comparingDouble(Outage::from)).toList()) {
      if (!joined.isEmpty() && next.from() <= joined.getLast().to()) {
        Outage last = joined.removeLast();
        joined.add(new Outage(last.from(), Math.max(last.to(), next.to())));
      } else {
        joined.add(next);
      }
    }
    for (Outage outage : joined) {
      effects.add(new Effect.CircuitOff(circuit, outage.from()));
      if (outage.to() < Double.POSITIVE_INFINITY) {
        effects.add(new Effect.CircuitOn(circuit, outage.to()));
      }
    }
  }
}
