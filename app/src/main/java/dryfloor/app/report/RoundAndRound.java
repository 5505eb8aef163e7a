package dryfloor.app.report;

import dryfloor.analysis.outcome.Ledger;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Tells water that is pumped round and round from water that changes place. Circles are taken out
 * of the movements one by one, each by the least that any of its ways carries; what is left leads
 * from where water is missing to where it is found. Several movements from one place to another
 * share what goes round by how much each carries; where longer ways lead the same way, those that
 * the ledger lists first count as going round.
 */
final class RoundAndRound {

  /** Less than this (m³) is rounding. */
  private static final double ROUNDING = 1e-9;

  /** All that leads from one place to another. */
  private record Way(String from, String to) {}

  /** What of each way is not known to go round (m³). */
  private final Map<Way, Double> left = new LinkedHashMap<>();

  private final Map<Way, Double> all;

  private RoundAndRound(List<Movement> movements) {
    movements.stream()
        .filter(movement -> !isByHand(movement))
        .forEach(movement -> left.merge(way(movement), movement.volume(), Double::sum));
    all = Map.copyOf(left);
  }

  /** The same movements, each with what of it went round and round. */
  static List<Movement> toldApart(List<Movement> movements) {
    RoundAndRound circles = new RoundAndRound(movements);
    List.copyOf(circles.left.keySet()).forEach(circles::takeOutCirclesThrough);
    return movements.stream().map(circles::told).toList();
  }

  /** What somebody takes out is gone: what is poured in at another time is other water. */
  private static boolean isByHand(Movement movement) {
    return movement.from().equals(Ledger.OUTSIDE) || movement.to().equals(Ledger.OUTSIDE);
  }

  private static Way way(Movement movement) {
    return new Way(movement.from(), movement.to());
  }

  private Movement told(Movement movement) {
    double carried = all.getOrDefault(way(movement), 0.0);
    double round = carried - left(way(movement));
    return movement.withRound(carried > 0 ? movement.volume() * round / carried : 0);
  }

  private double left(Way way) {
    return left.getOrDefault(way, 0.0);
  }

  private void takeOutCirclesThrough(Way first) {
    Optional<List<Way>> back = wayBack(first);
    while (left(first) > ROUNDING && back.isPresent()) {
      List<Way> circle = new ArrayList<>(back.get());
      circle.add(first);
      double least = circle.stream().mapToDouble(this::left).min().orElseThrow();
      circle.forEach(way -> left.merge(way, -least, Double::sum));
      back = wayBack(first);
    }
  }

  /** The fewest ways from where this one leads back to where it begins. */
  private Optional<List<Way>> wayBack(Way first) {
    Map<String, List<Way>> known = new HashMap<>(Map.of(first.to(), List.of()));
    Deque<String> open = new ArrayDeque<>(known.keySet());
    while (!open.isEmpty() && !known.containsKey(first.from())) {
      String place = open.removeFirst();
      for (Way way : left.keySet()) {
        if (way.from().equals(place) && left(way) > ROUNDING && !known.containsKey(way.to())) {
          List<Way> longer = new ArrayList<>(known.getOrDefault(place, List.of()));
          longer.add(way);
          known.put(way.to(), longer);
          open.addLast(way.to());
        }
      }
    }
    return Optional.ofNullable(known.get(first.from()));
  }
}
