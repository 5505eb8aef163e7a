package dryfloor.analysis.band;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Searches for the worst and the best corner of each failure where there are too many corners to
 * run them all.
 *
 * <p>Each search begins where every value is at that end which, alone, was the worse (or the
 * better) one. Then one value after another is tried at its other end, and kept there if that is
 * worse (better), until a whole round changes nothing, at most {@value #ROUNDS} times. A value that
 * alone changes nothing about a failure stays as drawn. Where two values only do something
 * together, or where three must move at once, a corner can be missed.
 */
final class Climbs {

  private static final int ROUNDS = 3;

  private final Runs runs;
  private final int values;
  private final List<Climb> climbs = new ArrayList<>();

  /** A search under way. */
  private final class Climb {
    final int failure;
    final boolean toWorst;
    final List<Integer> moving = new ArrayList<>();
    Point reached = Point.asDrawn(values);
    boolean moved = true;

    Climb(int failure, boolean toWorst) {
      this.failure = failure;
      this.toWorst = toWorst;
      Point drawn = Point.asDrawn(values);
      for (int value = 0; value < values; value++) {
        Point low = drawn.with(value, -1);
        Point high = drawn.with(value, 1);
        if (isBetterAim(low, drawn)
            || isBetterAim(drawn, low)
            || isBetterAim(high, drawn)
            || isBetterAim(drawn, high)) {
          moving.add(value);
          reached = reached.with(value, isBetterAim(low, high) ? -1 : 1);
        }
      }
    }

    /** Whether a point is nearer to what is searched for; one that can't be judged never is. */
    boolean isBetterAim(Point point, Point than) {
      return runs.figures(point, failure)
          .filter(
              found ->
                  runs.figures(than, failure)
                      .map(old -> toWorst ? found.isWorseThan(old) : old.isWorseThan(found))
                      .orElse(true))
          .isPresent();
    }

    Point turned(int value) {
      return reached.with(value, -reached.shares().get(value));
    }

    void keepIfBetter(int value) {
      if (moving.contains(value) && isBetterAim(turned(value), reached)) {
        reached = turned(value);
        moved = true;
      }
    }
  }

  private Climbs(Runs runs, int values, int failures) {
    this.runs = runs;
    this.values = values;
    for (int failure = 0; failure < failures; failure++) {
      climbs.add(new Climb(failure, true));
      climbs.add(new Climb(failure, false));
    }
  }

  /** Searches, once each value has been run alone at both ends; all runs are remembered there. */
  static void all(Runs runs, int values, int failures) {
    new Climbs(runs, values, failures).search();
  }

  private void search() {
    Map<Point, SortedSet<Integer>> wanted = new LinkedHashMap<>();
    climbs.forEach(climb -> want(climb.reached, climb, wanted));
    runs.run(wanted);
    for (int round = 0; round < ROUNDS; round++) {
      List<Climb> still = climbs.stream().filter(climb -> climb.moved).toList();
      still.forEach(climb -> climb.moved = false);
      for (int value = 0; value < values; value++) {
        round(still, value);
      }
    }
  }

  private void round(List<Climb> still, int value) {
    Map<Point, SortedSet<Integer>> wanted = new LinkedHashMap<>();
    still.stream()
        .filter(climb -> climb.moving.contains(value))
        .forEach(climb -> want(climb.turned(value), climb, wanted));
    runs.run(wanted);
    still.forEach(climb -> climb.keepIfBetter(value));
  }

  private static void want(Point point, Climb climb, Map<Point, SortedSet<Integer>> wanted) {
    wanted.computeIfAbsent(point, first -> new TreeSet<>()).add(climb.failure);
  }
}
