package dryfloor.analysis.generated;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.failure.Effect;
import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.simulation.Accuracy;
import dryfloor.analysis.simulation.Course;
import dryfloor.analysis.simulation.OutcomeBuilder;
import dryfloor.model.Installation;
import dryfloor.model.element.Circuit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** What has come to rest stays where it is until something happens to it. */
@Tried
class RestPropertiesTest {

  private static final int FAILURES = 6;

  @Property(tries = 40, edgeCases = EdgeCasesMode.NONE)
  void waterThatHasComeToRestStaysThere(
      @ForAll Building building, @ForAll @IntRange(max = 1000) int lot) {
    Optional<Settled> settled = Settled.calm(building);
    Assume.that(settled.isPresent());
    if (hasNothingLeftToHappen(settled.get().normal())) {
      staysWhereItIs(settled.get(), "normal operation");
    }
    for (Failure failure : settled.get().sample(FAILURES, lot)) {
      settled
          .get()
          .after(failure)
          .filter(Settled::isStill)
          .filter(RestPropertiesTest::hasNothingLeftToHappen)
          .map(course -> new Settled(settled.get().installation(), course))
          .ifPresent(rest -> staysWhereItIs(rest, FailureNames.id(failure)));
    }
  }

  private static void staysWhereItIs(Settled rest, String what) {
    rest.after(rest.normal().network(), Accuracy.USUAL)
        .map(course -> OutcomeBuilder.of(course, List.of()))
        .ifPresent(
            again -> Levels.stay(rest.outcome(), again, Levels.A_TENTH_OF_A_MILLIMETRE, what));
  }

  /**
   * What creeps by less than 0.1 mm an hour when the unattended time is over counts as at rest, and
   * would creep on for as long again. Power that is cut, water that is poured, a wall that fails:
   * that would happen a second time. What stands in the pieces of a parted run is not handed on, as
   * a failure begins after normal operation only, where all runs are whole.
   */
  private static boolean hasNothingLeftToHappen(Course course) {
    return Settled.followedFor(course) < course.network().away()
        && course.network().effects().stream()
            .noneMatch(
                effect ->
                    effect instanceof Effect.RunParted
                        || effect instanceof Effect.VesselLost
                        || effect instanceof Effect.CircuitOn
                        || effect instanceof Effect.CircuitOff
                        || effect instanceof Effect.Poured
                        || effect instanceof Effect.Taken);
  }

  @Property(tries = 40, edgeCases = EdgeCasesMode.NONE)
  void aFailureThatTouchesNothingIsNormalOperation(@ForAll Building building) {
    Optional<Settled> settled = Settled.of(withASpareCircuit(building.draw()));
    Assume.that(settled.isPresent());
    Optional<Course> normal = settled.get().after(settled.get().normal().network(), Accuracy.USUAL);
    Optional<Course> failed = settled.get().after(new Failure.CircuitTrips("spare"));
    assertThat(failed.isPresent()).isEqualTo(normal.isPresent());
    if (normal.isPresent()) {
      Outcome before = OutcomeBuilder.of(normal.get(), List.of());
      Outcome after = OutcomeBuilder.of(failed.orElseThrow(), List.of());
      assertThat(after.vessels()).isEqualTo(before.vessels());
      assertThat(after.floors()).isEqualTo(before.floors());
      assertThat(after.drained()).isEqualTo(before.drained());
      assertThat(after.ledger()).isEqualTo(before.ledger());
      assertThat(after.verdict()).isEqualTo(before.verdict());
      assertThat(after.ending()).isEqualTo(before.ending());
    }
  }

  private static Installation withASpareCircuit(Installation drawn) {
    List<Circuit> circuits = new ArrayList<>(drawn.circuits());
    circuits.add(new Circuit("spare", "spare", 0));
    return drawn.withCircuits(circuits);
  }
}
