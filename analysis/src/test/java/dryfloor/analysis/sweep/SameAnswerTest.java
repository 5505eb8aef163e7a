package dryfloor.analysis.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.installation.BackToFront;
import dryfloor.analysis.installation.Fingerprint;
import dryfloor.analysis.installation.Lifted;
import dryfloor.analysis.installation.Named;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.model.Installation;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The answer does not depend on how many threads look for it, how the file is sorted, or datum. */
class SameAnswerTest {

  /**
   * Steps that begin at other roundings end elsewhere within their accuracy of 2 µm; a level at
   * which a flow stops dead keeps that error.
   */
  private static final double A_HUNDREDTH_OF_A_MILLIMETRE = 1e-5;

  private static final Map<String, SweepResult> DRAWN = new HashMap<>();

  static Stream<Named> installations() {
    return Named.small();
  }

  /** Every failure on two threads, worked out once for all tests. */
  private static SweepResult drawn(Named named) throws BaselineProblem {
    SweepResult known = DRAWN.get(named.name());
    if (known != null) {
      return known;
    }
    SweepResult result = Sweep.everyFailure(named.installation(), 2, Progress.NONE);
    DRAWN.put(named.name(), result);
    return result;
  }

  @ParameterizedTest
  @MethodSource("installations")
  void twoThreadsAndAShuffledFileGiveTheSameAnswersToTheLastBit(Named named)
      throws BaselineProblem {
    Installation shuffled = BackToFront.shuffled(named.installation(), 42);

    SweepResult answers = Sweep.everyFailure(shuffled, 1, Progress.NONE);

    assertThat(Fingerprint.of(answers)).isEqualTo(Fingerprint.of(drawn(named)));
  }

  @ParameterizedTest
  @MethodSource("dryfloor.analysis.installation.Named#shipped")
  void aShuffledShippedFileLosesItsPowerInTheSameWay(Named named) throws BaselineProblem {
    List<Failure> lost = List.of(new Failure.BuildingLosesPower());

    FailureResult drawn = Sweep.together(named.installation(), lost);
    FailureResult shuffled = Sweep.together(BackToFront.shuffled(named.installation(), 7), lost);

    assertThat(Fingerprint.of(shuffled)).isEqualTo(Fingerprint.of(drawn));
  }

  @ParameterizedTest
  @MethodSource("installations")
  void anotherDatumChangesNothing(Named named) throws BaselineProblem {
    double up = 17.25;
    SweepResult drawn = drawn(named);

    SweepResult lifted =
        Sweep.everyFailure(new Lifted(up).lift(named.installation()), 2, Progress.NONE);

    for (int i = 0; i < drawn.results().size(); i++) {
      String failure = FailureNames.id(drawn.results().get(i).failure());
      Outcome low = outcome(drawn.results().get(i));
      Outcome high = outcome(lifted.results().get(i));
      assertThat(high.verdict()).as(failure).isEqualTo(low.verdict());
      for (int v = 0; v < low.vessels().size(); v++) {
        assertThat(high.vessels().get(v).levelAfter() - up)
            .as(low.vessels().get(v).id() + ", " + failure)
            .isCloseTo(low.vessels().get(v).levelAfter(), within(A_HUNDREDTH_OF_A_MILLIMETRE));
      }
    }
  }

  private static Outcome outcome(FailureResult result) {
    return switch (result) {
      case FailureResult.Answered answered -> answered.outcome();
      case FailureResult.Unanswered unanswered -> throw new AssertionError(unanswered.reason());
      case FailureResult.Skipped skipped -> throw new AssertionError(skipped.reason());
    };
  }
}
