package dryfloor.analysis.together;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Minimal cut sets as fault-tree practice has them (NUREG-0492, Fault Tree Handbook, 1981, chapter
 * VII; from memory): the smallest sets of basic events that make the top event happen if all of
 * them do. None of them can be left out of a set.
 */
final class MinimalSets {

  private MinimalSets() {}

  /** What is known of some events at once. */
  enum Happens {
    /** They make the top event happen. */
    TOP_EVENT,
    /** They do not, so that one event more might. */
    NOTHING,
    /** They exclude each other, or nobody knows: no larger set of them is looked at. */
    UNDECIDED
  }

  /**
   * Finds the minimal sets, the smallest first, each in the order of the events.
   *
   * @param most events of one set
   * @param together what happens with each of some sets of one size, none of which holds a smaller
   *     set that makes the top event happen or is undecided
   */
  static <E> List<List<E>> of(
      List<E> events, int most, Function<List<List<E>>, List<Happens>> together) {
    List<List<E>> minimal = new ArrayList<>();
    Set<List<E>> open = Set.of(List.of());
    for (int size = 1; size <= most; size++) {
      List<List<E>> sets = extended(open, events, size);
      List<Happens> happens = together.apply(sets);
      Set<List<E>> next = new HashSet<>();
      for (int i = 0; i < sets.size(); i++) {
        switch (happens.get(i)) {
          case TOP_EVENT -> minimal.add(sets.get(i));
          case NOTHING -> next.add(sets.get(i));
          case UNDECIDED -> {}
        }
      }
      open = next;
    }
    return minimal;
  }

  /** Every set of this size whose subsets of one event less are all open. */
  private static <E> List<List<E>> extended(Set<List<E>> open, List<E> events, int size) {
    List<List<E>> sets = new ArrayList<>();
    extend(List.of(), 0, open, events, size, sets);
    return sets;
  }

  private static <E> void extend(
      List<E> set, int from, Set<List<E>> open, List<E> events, int size, List<List<E>> sets) {
    if (set.size() == size) {
      if (lessOne(set).allMatch(open::contains)) {
        sets.add(set);
      }
      return;
    }
    if (set.size() == size - 1 && !open.contains(set)) {
      return;
    }
    for (int i = from; i < events.size(); i++) {
      List<E> longer = new ArrayList<>(set);
      longer.add(events.get(i));
      extend(List.copyOf(longer), i + 1, open, events, size, sets);
    }
  }

  private static <E> Stream<List<E>> lessOne(List<E> set) {
    return IntStream.range(0, set.size())
        .mapToObj(
            left -> {
              List<E> others = new ArrayList<>(set);
              others.remove(left);
              return List.copyOf(others);
            });
  }
}
