package dryfloor.analysis.together;

import static dryfloor.analysis.installation.Plan.box;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.Failure.Degree;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.installation.InTurn;
import dryfloor.analysis.installation.OnlyWith;
import dryfloor.analysis.installation.Plan;
import dryfloor.analysis.installation.ReservoirInABund;
import dryfloor.analysis.outcome.Verdict;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.Inquiry;
import dryfloor.analysis.sweep.Progress;
import dryfloor.model.Installation;
import dryfloor.model.element.Run;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The smallest sets of failures that wet a floor. */
class CutSetsTest {

  private static final Failure FLOAT = new Failure.FloatValveStuckOpen("float");
  private static final Failure OVERFLOW = new Failure.RunClogs("overflow", Degree.FULLY);
  private static final Failure BUND = new Failure.BasinDrainBlocked("bund-drain");

  /**
   *
   *
   * <pre>
   * The float of the reservoir may stick; then an overflow takes the water. If that is clogged, the
   * bund under it has a drain. Only where that is blocked too, 100 L fill the reservoir to its rim
   * and 170 L the bund, and what comes after those 270 L wets the floor.
   * </pre>
   */
  private static Installation threeDeep() {
    return ReservoirInABund.drainedThrough(0.04)
        .run(
            "overflow",
            r ->
                r.from("reservoir", 0.9).toDrain("sewer").duty(Run.Duty.DRAIN).bore(0.04).length(2))
        .draw();
  }

  @Test
  void theFloorGetsWetOnlyWhenFloatOverflowAndBundFail() throws BaselineProblem {
    Set<Failure> three = Set.of(FLOAT, OVERFLOW, BUND);
    Inquiry inquiry = Inquiry.of(OnlyWith.failures(threeDeep(), three::contains), () -> false);

    CutSetResult found = CutSets.of(inquiry, 1, Progress.NONE);

    assertThat(found.sets()).hasSize(1);
    CutSet set = found.sets().getFirst();
    assertThat(Set.copyOf(set.failures())).isEqualTo(three);
    double in = ReservoirInABund.INFLOW * ReservoirInABund.AWAY;
    assertThat(set.outcome().reachedFloors()).isCloseTo(in - 0.270, withPercentage(0.1));
    assertThat(set.outcome().firstWetFloor().orElseThrow())
        .isCloseTo(0.270 / ReservoirInABund.INFLOW, withPercentage(1));
  }

  @Test
  void setsOfOneAndTwoAreTheWetFailuresAndPairs() throws BaselineProblem {
    Inquiry inquiry = Inquiry.of(threeDeep(), () -> false);

    CutSetResult found = CutSets.of(inquiry, 2, Progress.NONE);

    PairResult pairs = Pairs.of(inquiry, Scope.EVERY_TWO, 2, Progress.NONE);
    assertThat(found.ofSize(2))
        .extracting(CutSet::failures)
        .containsExactlyElementsOf(pairs.newlyWet().stream().map(wet -> wet.pair().both()).toList())
        .isNotEmpty();
    assertThat(found.ofSize(1))
        .allMatch(set -> set.outcome().verdict() == Verdict.WET)
        .isNotEmpty();
  }

  @Test
  void leavingOutSetsOfThreeChangesNoAnswer() throws BaselineProblem {
    Inquiry inquiry = Inquiry.of(threeDeep(), () -> false);

    CutSetResult found = CutSets.of(inquiry, 2, Progress.NONE);

    assertThat(found.simulated()).isLessThan(found.threes());
    Set<List<Failure>> minimal = new HashSet<>();
    found.ofSize(3).forEach(set -> minimal.add(set.failures()));
    List<List<Failure>> threes = threesOfDryPairs(found);
    assertThat(threes).hasSize(found.threes());
    for (List<Failure> three : threes) {
      assertThat(isWet(inquiry, three))
          .as(three.stream().map(FailureNames::id).toList().toString())
          .isEqualTo(minimal.contains(three));
    }
  }

  @ParameterizedTest
  @CsvSource({"clogged.overflow, DRY", "wall-fails.reservoir, WET"})
  void aSequenceIsSeveralFailuresAlreadyAndInNoSet(String event, Verdict alone)
      throws BaselineProblem {
    Installation three = OnlyWith.failures(threeDeep(), Set.of(FLOAT, OVERFLOW, BUND)::contains);
    Inquiry inquiry = Inquiry.of(InTurn.in(three).begins(0, event).drawing(), () -> false);

    CutSetResult found = CutSets.of(inquiry, 1, Progress.NONE);

    assertThat(isWet(inquiry, List.of(InTurn.failure()))).isEqualTo(alone == Verdict.WET);
    assertThat(found.failures()).isEqualTo(3);
    assertThat(found.sets())
        .singleElement()
        .satisfies(set -> assertThat(set.failures()).doesNotContain(InTurn.failure()));
  }

  /** The bund stands in a pit to which an air conditioner brings 12 L a day. */
  private static Plan inAPit() {
    return ReservoirInABund.filled(
            ReservoirInABund.room()
                .drain("sewer", -0.5)
                .source("condensate", 0.5, 0.012 / ReservoirInABund.AWAY)
                .vessel("pit", box(2, 1.5, 0.15), v -> v.in("room").level(0.02))
                .basin("bund", box(1.6, 1, 0.1), "pit"))
        .run("drip", r -> r.fromSupply("condensate").to("pit", 0.2).bore(0.012).length(1))
        .run(
            "overflow",
            r ->
                r.from("reservoir", 0.9)
                    .toDrain("sewer")
                    .duty(Run.Duty.DRAIN)
                    .bore(0.04)
                    .length(2));
  }

  /** Whichever of the two that are apart is listed first: the valve before the clogged drain. */
  @Test
  void aThirdFailureJoinsTwoThatAreApartInAPitWithADrain() throws BaselineProblem {
    Failure clogged = new Failure.RunClogs("pit-drain", Degree.FULLY);
    Installation pit =
        inAPit()
            .run("pit-drain", r -> r.fromLip("pit", 0.02).toDrain("sewer").bore(0.04).length(1))
            .draw();

    assertThatAThirdJoins(new Pair(FLOAT, clogged), pit);
  }

  /** And the pump that stops before the valve. */
  @Test
  void aThirdFailureJoinsTwoThatAreApartInAPitThatIsPumpedDry() throws BaselineProblem {
    Failure stopped = new Failure.PumpStops("pit-pump");
    Installation pit =
        inAPit()
            .circuit("main")
            .run(
                "pit-drain",
                r ->
                    r.from("pit", 0.02)
                        .toDrain("sewer")
                        .length(2)
                        .by(0.5, 1)
                        .pump("pit-pump", 0.1, "main", 0, 3, 1, 0))
            .draw();

    assertThatAThirdJoins(new Pair(stopped, FLOAT), pit);
  }

  /**
   * The float alone is the overflow's business, the pit alone holds its 12 L; the two have nothing
   * to do with each other. If the overflow is clogged, the bund runs over into the pit, which then
   * is where they meet.
   */
  private static void assertThatAThirdJoins(Pair apart, Installation pit) throws BaselineProblem {
    Set<Failure> three = Set.of(apart.first(), apart.second(), OVERFLOW);
    Inquiry inquiry = Inquiry.of(OnlyWith.failures(pit, three::contains), () -> false);

    CutSetResult found = CutSets.of(inquiry, 1, Progress.NONE);

    assertThat(found.pairs().of(PairAnswer.Apart.class))
        .extracting(PairAnswer.Apart::pair)
        .contains(apart);
    assertThat(found.sets())
        .singleElement()
        .satisfies(set -> assertThat(Set.copyOf(set.failures())).isEqualTo(three));
  }

  private static List<List<Failure>> threesOfDryPairs(CutSetResult found) {
    Set<Pair> dry = new HashSet<>();
    found.pairs().of(PairAnswer.AsOneAlone.class).forEach(same -> dry.add(same.pair()));
    found.pairs().of(PairAnswer.Apart.class).forEach(apart -> dry.add(apart.pair()));
    found.pairs().of(PairAnswer.Together.class).stream()
        .filter(both -> !both.isNewlyWet())
        .forEach(both -> dry.add(both.pair()));
    List<Failure> failures = found.pairs().failures();
    List<List<Failure>> threes = new ArrayList<>();
    for (int a = 0; a < failures.size(); a++) {
      for (int b = a + 1; b < failures.size(); b++) {
        for (int c = b + 1; c < failures.size(); c++) {
          List<Failure> three = List.of(failures.get(a), failures.get(b), failures.get(c));
          if (dry.contains(new Pair(three.get(0), three.get(1)))
              && dry.contains(new Pair(three.get(0), three.get(2)))
              && dry.contains(new Pair(three.get(1), three.get(2)))) {
            threes.add(three);
          }
        }
      }
    }
    return threes;
  }

  private static boolean isWet(Inquiry inquiry, List<Failure> failures) {
    return switch (inquiry.answerOnce(failures)) {
      case FailureResult.Answered answered -> answered.outcome().verdict() == Verdict.WET;
      case FailureResult.Unanswered open -> false;
      case FailureResult.Skipped skipped -> false;
    };
  }
}
