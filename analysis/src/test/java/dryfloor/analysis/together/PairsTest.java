package dryfloor.analysis.together;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.Failure.Degree;
import dryfloor.analysis.failure.FailureCatalogue;
import dryfloor.analysis.failure.FailureTraits;
import dryfloor.analysis.installation.BackToFront;
import dryfloor.analysis.installation.DisplayAboveSump;
import dryfloor.analysis.installation.EverythingHouse;
import dryfloor.analysis.installation.OnlyWith;
import dryfloor.analysis.outcome.Verdict;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.Progress;
import dryfloor.model.Installation;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Which failures wet a floor together. */
class PairsTest {

  private static final Failure DRAIN = new Failure.RunClogs("drain", Degree.FULLY);
  private static final Failure EMERGENCY = new Failure.RunClogs("emergency", Degree.FULLY);
  private static final Failure POWER_LOST = new Failure.BuildingLosesPower();

  /** Outlet at 200 mm: without its siphon break the display empties into a sump without room. */
  private static Installation withALowOutlet() {
    return new DisplayAboveSump().outletAt(0.2).plan().draw();
  }

  @Test
  void theSiphonBreakAloneStandsBetweenPowerLossAndTheFloor() throws BaselineProblem {
    PairResult pairs = Pairs.of(withALowOutlet(), Scope.HIDDEN_WITH_POWER, 1, Progress.NONE);

    Failure hole = new Failure.SiphonBreakBlocked("siphon-break");
    assertThat(pairs.newlyWet())
        .extracting(PairAnswer.Together::pair)
        .contains(new Pair(POWER_LOST, hole))
        .allMatch(pair -> pair.has(hole));
    assertThat(pairs.protections()).extracting(Protection::failure).containsExactly(hole);
  }

  @Test
  void theEmergencyDrainAloneStandsBetweenACloggedDrainAndTheFloor() throws BaselineProblem {
    PairResult pairs =
        Pairs.of(
            OnlyWith.failures(
                EverythingHouse.asDrawn(), f -> f.equals(DRAIN) || f.equals(EMERGENCY)),
            Scope.HIDDEN_WITH_ANY_EVENT,
            1,
            Progress.NONE);

    assertThat(pairs.answers()).hasSize(1);
    assertThat(pairs.newlyWet().getFirst().outcome().verdict()).isEqualTo(Verdict.WET);
    assertThat(pairs.newlyWet().getFirst().outcome().reachedFloors()).isPositive();
    assertThat(pairs.protections().getFirst().failure()).isEqualTo(EMERGENCY);
  }

  @Test
  void whatWetsAFloorAloneIsNoMatterOfPairs() throws BaselineProblem {
    Installation house =
        OnlyWith.failures(
            withALowOutlet(),
            f -> f.equals(POWER_LOST) || f.equals(new Failure.WallFails("display")));

    PairResult pairs = Pairs.of(house, Scope.EVERY_TWO, 1, Progress.NONE);

    assertThat(pairs.answers())
        .containsExactly(
            new PairAnswer.WetAlone(
                new Pair(POWER_LOST, new Failure.WallFails("display")), false, true));
  }

  @Test
  void aDrainIsNotCloggedFullyAndByHalfAtOnce() throws BaselineProblem {
    Failure half = new Failure.RunClogs("drain", Degree.BY_HALF);
    Installation house =
        OnlyWith.failures(EverythingHouse.asDrawn(), f -> f.equals(DRAIN) || f.equals(half));

    PairResult pairs = Pairs.of(house, Scope.EVERY_TWO, 1, Progress.NONE);

    assertThat(pairs.answers()).hasSize(1).hasOnlyElementsOfType(PairAnswer.Excluded.class);
  }

  @Test
  void hiddenFailuresMeetPowerOnlyOrEveryEventThatShows() throws BaselineProblem {
    Installation house = EverythingHouse.asDrawn();
    List<Failure> all = FailureCatalogue.of(house);
    long hidden = all.stream().filter(f -> FailureTraits.isHidden(f, house)).count();
    long power = all.stream().filter(FailureTraits::isOrdinaryEvent).count();

    PairResult withPower = Pairs.of(house, Scope.HIDDEN_WITH_POWER, 2, Progress.NONE);
    PairResult withAll = Pairs.of(house, Scope.HIDDEN_WITH_ANY_EVENT, 2, Progress.NONE);

    assertThat(withPower.answers()).hasSize((int) (hidden * power));
    assertThat(withAll.answers()).hasSize((int) (hidden * (all.size() - hidden)));
  }

  @Test
  void threadsAndTheOrderOfTheFileChangeNothing() throws BaselineProblem {
    Installation house = EverythingHouse.asDrawn();

    PairResult one = Pairs.of(house, Scope.HIDDEN_WITH_POWER, 1, Progress.NONE);
    PairResult other =
        Pairs.of(BackToFront.shuffled(house, 5), Scope.HIDDEN_WITH_POWER, 3, Progress.NONE);

    assertThat(other.answers()).isEqualTo(one.answers());
  }

  @Test
  void whatIsCancelledHasNoAnswer() throws BaselineProblem {
    Installation house = EverythingHouse.asDrawn();
    int failures = FailureCatalogue.of(house).size();
    Progress untilPairs =
        new Progress() {
          private int tasks;

          @Override
          public void finished(int done, int of) {
            tasks++;
          }

          @Override
          public boolean cancelled() {
            return tasks > failures + 2;
          }
        };

    PairResult pairs = Pairs.of(house, Scope.EVERY_TWO, 1, untilPairs);

    assertThat(pairs.of(PairAnswer.Together.class)).isNotEmpty();
    assertThat(pairs.of(PairAnswer.Unanswered.class))
        .isNotEmpty()
        .allMatch(unanswered -> unanswered.reason().equals("it was cancelled"));
  }
}
