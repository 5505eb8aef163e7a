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
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Assertions;

/** A verdict or an honest word that there is none; never a hang, never an exception. */
@Tried
class AlwaysAnswersPropertiesTest {

  private static final int FAILURES = 5;

  /** Far more than the slowest takes on a slow machine: only a hang takes longer. */
  private static final Duration FOR_EVER = Duration.ofMinutes(5);

  private static final int MANY = 40;

  /** Share of failures that get a verdict: all but one in a hundred. */
  private static final double HARDLY_ALL = 0.99;

  private static final double SALTIEST = 35;

  /** What rounding leaves of no salt in a few drops (g/kg). */
  private static final double NO_SALT = 1e-4;

  /** (m) */
  private static final double ROUNDING = 1e-9;

  @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
  void everyFailureGetsAVerdictOrIsSaidToHaveNone(
      @ForAll Building building, @ForAll @IntRange(max = 1000) int lot) {
    Assertions.assertTimeoutPreemptively(
        FOR_EVER,
        () -> {
          Optional<Settled> settled = Settled.of(building.draw());
          if (settled.isPresent()) {
            for (Failure failure : settled.get().sample(FAILURES, lot)) {
              isAnswered(settled.get(), failure);
            }
          }
        });
  }

  /** Else one that never answers would do for all the other properties. */
  @Property(tries = 1, edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.OFF)
  void hardlyAnyFailureIsLeftWithoutAVerdict(
      @ForAll @Size(MANY) List<Building> buildings, @ForAll @IntRange(max = 1000) int lot) {
    int asked = 0;
    int answered = 0;
    for (Building building : buildings) {
      Optional<Settled> settled = Settled.of(building.draw());
      asked++;
      if (settled.isPresent()) {
        answered++;
        for (Failure failure : settled.get().sample(FAILURES, lot)) {
          asked++;
          answered += isAnswered(settled.get(), failure) ? 1 : 0;
        }
      }
    }
    assertThat(answered).isGreaterThanOrEqualTo((int) Math.ceil(HARDLY_ALL * asked));
  }

  private static boolean isAnswered(Settled settled, Failure failure) {
    FlowNetwork failed =
        FlowNetwork.of(
            settled.installation(), FailureResolver.resolve(settled.installation(), failure));
    try {
      Course course = Simulation.ofFailure(settled.normal(), failed, Accuracy.USUAL, () -> false);
      isWhole(OutcomeBuilder.of(course, List.of()), FailureNames.id(failure));
      return true;
    } catch (NoAnswer noAnswer) {
      assertThat(noAnswer.reason()).as(FailureNames.id(failure)).isNotBlank();
      return false;
    }
  }

  /**
   * Every figure of an answer is a number, no amount is less than nothing, and no level ends above
   * its highest.
   */
  private static void isWhole(Outcome outcome, String failure) {
    for (Outcome.VesselOutcome vessel : outcome.vessels()) {
      assertThat(vessel.levelAfter()).as(vessel.id() + ", " + failure).isFinite();
      assertThat(vessel.salinityAfter())
          .as(vessel.id() + ", " + failure)
          .isBetween(-NO_SALT, SALTIEST + NO_SALT);
      assertThat(vessel.spilled()).as(vessel.id() + ", " + failure).isNotNegative().isFinite();
      assertThat(vessel.levelAfter())
          .as("end of " + vessel.id() + ", " + failure)
          .isLessThanOrEqualTo(vessel.highestLevel() + ROUNDING);
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
