package dryfloor.analysis.generated;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.StoryEvent;
import dryfloor.analysis.outcome.Verdict;
import dryfloor.analysis.simulation.Course;
import dryfloor.analysis.simulation.OutcomeBuilder;
import dryfloor.model.Installation;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** More protection never wets a floor that stays dry without it. */
@Tried
class MonotonePropertiesTest {

  private static final int FAILURES = 8;

  @Property(tries = 30, edgeCases = EdgeCasesMode.NONE)
  void aTallerRimWetsNoFloor(
      @ForAll Building building,
      @ForAll @IntRange(max = 1000) int lot,
      @ForAll @IntRange(min = 1, max = 200) int millimetres) {
    wetsNoFloor(building, lot, drawn -> Raised.rims(drawn, Unit.mm(millimetres)));
  }

  @Property(tries = 30, edgeCases = EdgeCasesMode.NONE)
  void aDeeperBasinWetsNoFloor(
      @ForAll Building building,
      @ForAll @IntRange(max = 1000) int lot,
      @ForAll @IntRange(min = 1, max = 200) int millimetres) {
    wetsNoFloor(building, lot, drawn -> Raised.basins(drawn, Unit.mm(millimetres)));
  }

  @Property(tries = 30, edgeCases = EdgeCasesMode.NONE)
  void aWiderBasinWetsNoFloor(
      @ForAll Building building,
      @ForAll @IntRange(max = 1000) int lot,
      @ForAll @IntRange(min = 101, max = 300) int percent) {
    wetsNoFloor(building, lot, drawn -> Raised.wider(drawn, percent / 100.0));
  }

  /**
   * But where the drain ran full: a narrow one that has primed draws with its whole height, while a
   * wider one needs deeper water over its lip to prime and until then passes what the lip lets in.
   */
  @Property(tries = 30, edgeCases = EdgeCasesMode.NONE)
  void aWiderDrainWetsNoFloor(
      @ForAll Building building,
      @ForAll @IntRange(max = 1000) int lot,
      @ForAll @IntRange(min = 101, max = 300) int percent) {
    wetsNoFloor(
        building,
        lot,
        drawn -> Raised.drains(drawn, percent / 100.0),
        outcome -> noneRanFull(Raised.drainsOf(building.draw()), outcome));
  }

  private static boolean noneRanFull(Set<String> drains, Outcome outcome) {
    return outcome.story().stream()
        .noneMatch(
            event ->
                event.what() == StoryEvent.What.RUN_PRIMES && drains.contains(event.subject()));
  }

  private static void wetsNoFloor(Building building, int lot, UnaryOperator<Installation> change) {
    wetsNoFloor(building, lot, change, outcome -> true);
  }

  private static void wetsNoFloor(
      Building building,
      int lot,
      UnaryOperator<Installation> change,
      Predicate<Outcome> isNoException) {
    Optional<Settled> drawn = Settled.sound(building);
    Optional<Settled> safer = Settled.of(change.apply(building.draw()));
    Assume.that(drawn.isPresent() && safer.isPresent());
    for (Failure failure : drawn.get().sample(FAILURES, lot)) {
      Optional<Outcome> before = drawn.get().after(failure).map(MonotonePropertiesTest::outcome);
      if (before.filter(isNoException).isPresent() && before.get().verdict() != Verdict.WET) {
        Optional<Outcome> after = safer.get().after(failure).map(MonotonePropertiesTest::outcome);
        after.ifPresent(
            outcome ->
                assertThat(outcome.verdict())
                    .as("verdict after " + FailureNames.id(failure) + ": " + outcome.story())
                    .isNotEqualTo(Verdict.WET));
      }
    }
  }

  private static Outcome outcome(Course course) {
    return OutcomeBuilder.of(course, List.of());
  }
}
