package dryfloor.analysis.generated;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.failure.FailureResolver;
import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.simulation.Accuracy;
import dryfloor.analysis.simulation.Course;
import dryfloor.analysis.simulation.NoAnswer;
import dryfloor.analysis.simulation.OutcomeBuilder;
import dryfloor.analysis.simulation.Simulation;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Assertions;

/** A verdict or an honest word that there is none; never a hang, never an exception. */
@Tried
class AlwaysAnswersPropertiesTest {

  private static final int FAILURES = 5;

  /** Far more than the slowest takes on a slow machine: only a hang takes longer. */
  private static final Duration FOR_EVER = Duration.ofMinutes(5);

  private static final double SALTIEST = 35;

  /** Salt is followed to a ten-thousandth of the greatest salinity there is (g/kg). */
  private static final double SALT_IS_GOOD_TO = 1e-4 * SALTIEST;

  @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
  void everyFailureGetsAVerdictOrIsSaidToHaveNone(
      @ForAll Building building, @ForAll @IntRange(max = 1000) int lot) {
    Assertions.assertTimeoutPreemptively(
        FOR_EVER,
        () -> {
          Optional<Settled> settled = Settled.of(building.draw());
          if (settled.isPresent()) {
            for (Failure failure : settled.get().sample(FAILURES, lot)) {
              answer(settled.get(), failure);
            }
          }
        });
  }

  private static void answer(Settled settled, Failure failure) {
    FlowNetwork failed =
        FlowNetwork.of(
            settled.installation(), FailureResolver.resolve(settled.installation(), failure));
    try {
      Course course = Simulation.ofFailure(settled.normal(), failed, Accuracy.USUAL, () -> false);
      isWhole(OutcomeBuilder.of(course, List.of()), FailureNames.id(failure));
    } catch (NoAnswer noAnswer) {
      assertThat(noAnswer.reason()).as(FailureNames.id(failure)).isNotBlank();
    }
  }

  /** Every figure of an answer is a number, and no amount is less than nothing. */
  private static void isWhole(Outcome outcome, String failure) {
    for (Outcome.VesselOutcome vessel : outcome.vessels()) {
      assertThat(vessel.levelAfter()).as(vessel.id() + ", " + failure).isFinite();
      assertThat(vessel.salinityAfter())
          .as(vessel.id() + ", " + failure)
          .isBetween(-SALT_IS_GOOD_TO, SALTIEST + SALT_IS_GOOD_TO);
      assertThat(vessel.spilled()).as(vessel.id() + ", " + failure).isNotNegative().isFinite();
    }
    for (Outcome.FloorOutcome floor : outcome.floors()) {
      assertThat(floor.depth()).as(floor.id() + ", " + failure).isNotNegative().isFinite();
      assertThat(floor.received()).as(floor.id() + ", " + failure).isNotNegative().isFinite();
    }
    for (Outcome.VesselOutcome vessel : outcome.vessels()) {
      for (int moment = 0; moment < outcome.trajectory().moments(); moment++) {
        assertThat(outcome.trajectory().level(moment, vessel.id()))
            .as(vessel.id() + " at " + outcome.trajectory().time(moment) + " s, " + failure)
            .isGreaterThan(vessel.bottom() - Levels.A_TENTH_OF_A_MILLIMETRE);
      }
    }
    assertThat(outcome.ledger().entries())
        .as("ledger of " + failure)
        .allSatisfy(entry -> assertThat(entry.volume()).isPositive().isFinite());
  }
}
