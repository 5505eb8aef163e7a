package dryfloor.analysis.together;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.together.MinimalSets.Happens;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Function;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

class MinimalSetsTest {

  /**
   * The tank that bursts when its pump runs on, of NUREG-0492 (Fault Tree Handbook, 1981), chapter
   * VIII; the result from memory. Top event: the tank T fails by itself, or relay K2 fails shut, or
   * the pressure switch S fails shut together with a way to keep the pump's current on: switch S1,
   * relay K1, or the timer R fails shut. Five minimal cut sets: two of one event, three of two.
   */
  @Test
  void thePressureTankOfTheFaultTreeHandbookHasFive() {
    List<List<String>> sets =
        MinimalSets.of(
            List.of("T", "K2", "S", "S1", "K1", "R"),
            3,
            all(
                failed ->
                    failed.contains("T")
                        || failed.contains("K2")
                        || (failed.contains("S")
                            && (failed.contains("S1")
                                || failed.contains("K1")
                                || failed.contains("R")))));

    assertThat(sets)
        .containsExactly(
            List.of("T"), List.of("K2"), List.of("S", "S1"), List.of("S", "K1"), List.of("S", "R"));
  }

  @Test
  void setsOfThreeHoldNoSmallerOne() {
    // Any two neighbours, or the outer three of five.
    List<List<Integer>> sets =
        MinimalSets.of(
            List.of(1, 2, 3, 4, 5),
            3,
            all(
                set ->
                    (set.contains(1) && set.contains(2))
                        || (set.contains(1) && set.contains(3) && set.contains(5))
                        || set.contains(4)));

    assertThat(sets).containsExactly(List.of(4), List.of(1, 2), List.of(1, 3, 5));
  }

  @Test
  void whatIsUndecidedIsInNoLargerSet() {
    List<List<Integer>> asked = new ArrayList<>();
    MinimalSets.of(
        List.of(1, 2, 3),
        3,
        sets -> {
          asked.addAll(sets);
          return sets.stream()
              .map(set -> set.equals(List.of(1, 2)) ? Happens.UNDECIDED : Happens.NOTHING)
              .toList();
        });

    assertThat(asked).contains(List.of(1, 2), List.of(1, 3), List.of(2, 3));
    assertThat(asked).doesNotContain(List.of(1, 2, 3));
  }

  @Test
  void everySetThatCausesTheTopEventHoldsAMinimalOne() {
    Random random = new Random(6);
    for (int tried = 0; tried < 50; tried++) {
      List<List<Integer>> truth = new ArrayList<>();
      for (int i = 0; i < 6; i++) {
        truth.add(random.ints(0, 8).distinct().limit(1 + random.nextInt(3)).boxed().toList());
      }
      Predicate<List<Integer>> top = set -> truth.stream().anyMatch(set::containsAll);
      List<Integer> events = List.of(0, 1, 2, 3, 4, 5, 6, 7);

      List<List<Integer>> sets = MinimalSets.of(events, 3, all(top));

      assertThat(sets).allMatch(top);
      assertThat(truth).allMatch(set -> sets.stream().anyMatch(set::containsAll));
      assertThat(sets)
          .allMatch(
              set ->
                  sets.stream().noneMatch(other -> !other.equals(set) && set.containsAll(other)));
    }
  }

  private static <E> Function<List<List<E>>, List<Happens>> all(Predicate<List<E>> top) {
    return sets ->
        sets.stream().map(set -> top.test(set) ? Happens.TOP_EVENT : Happens.NOTHING).toList();
  }
}
