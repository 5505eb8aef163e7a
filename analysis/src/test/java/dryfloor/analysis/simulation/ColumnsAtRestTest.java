package dryfloor.analysis.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.installation.DisplayAboveSump;
import dryfloor.analysis.installation.Shipped;
import dryfloor.analysis.installation.Trial;
import dryfloor.analysis.outcome.Ending;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.Verdict;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.Sweep;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Water that is left in the legs of a run after a power loss comes to rest. */
class ColumnsAtRestTest {

  /**
   * The last millimetre in the outlet's leg passes to and fro between it and the display. What the
   * display gains then is the leg's own water, not a level that takes the leg along.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0.3, 0.35, 0.4, 0.45, 0.5})
  void theLegOfTheOutletComesToRestInTheDisplay(double outlet) throws BaselineProblem {
    FailureResult result =
        Sweep.together(
            new DisplayAboveSump().outletAt(outlet).plan().draw(),
            List.of(new Failure.BuildingLosesPower()));
    assertThat(result)
        .isInstanceOfSatisfying(
            FailureResult.Answered.class,
            answered -> {
              assertThat(answered.outcome().ending())
                  .isInstanceOfSatisfying(
                      Ending.AtRest.class, rest -> assertThat(rest.time()).isLessThan(60));
            });
  }

  /**
   * What is left in the reactor's suction leg falls to the level of the sump in a second. It goes
   * by the root of ever less head, and steps of a sixth of a second led from each height to the
   * same again, for eight hours, until they were given up.
   */
  @Test
  void aLegThatFallsToTheLevelOutsideIsNotCaughtAboveIt() {
    Outcome outcome =
        Trial.after(
            Shipped.named("research-rack-room/corrected"),
            new Failure.OnlyBackupRuns(),
            new Failure.OutletSinks("drain-a-lower", Failure.End.SECOND));

    assertThat(outcome.verdict()).isEqualTo(Verdict.DRY);
    assertThat(outcome.ending()).isInstanceOf(Ending.AtRest.class);
  }
}
