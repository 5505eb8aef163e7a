package dryfloor.analysis.generated;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.simulation.Accuracy;
import dryfloor.analysis.simulation.Course;
import dryfloor.analysis.simulation.OutcomeBuilder;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Smaller steps tell the same. */
@Tried
class TolerancePropertiesTest {

  private static final int FAILURES = 4;

  /** A twentieth of the error that a step may usually add. */
  private static final Accuracy FINE = new Accuracy(1e-7, 1e-9);

  /** What the project promises for what was spilled. */
  private static final double A_THOUSANDTH = 1e-3;

  private static final double A_MILLILITRE = 1e-6;

  @Property(tries = 30, edgeCases = EdgeCasesMode.NONE)
  void aFinerStepMovesNoLevelByMoreThanATenthOfAMillimetre(
      @ForAll Building building, @ForAll @IntRange(max = 1000) int lot) {
    Optional<Settled> settled = Settled.calm(building);
    Assume.that(settled.isPresent());
    for (Failure failure : settled.get().sample(FAILURES, lot)) {
      Optional<Course> usual = settled.get().after(failure).filter(Settled::isStill);
      Optional<Course> fine =
          usual.isPresent() ? settled.get().after(failure, FINE) : Optional.empty();
      if (usual.isPresent() && fine.isPresent()) {
        sameWater(
            OutcomeBuilder.of(usual.get(), List.of()),
            OutcomeBuilder.of(fine.get(), List.of()),
            FailureNames.id(failure));
      }
    }
  }

  private static void sameWater(Outcome usual, Outcome fine, String failure) {
    Levels.same(usual, fine, 0, Levels.A_TENTH_OF_A_MILLIMETRE, failure);
    for (int v = 0; v < usual.vessels().size(); v++) {
      double spilled = fine.vessels().get(v).spilled();
      assertThat(usual.vessels().get(v).spilled())
          .as("spilled from '" + usual.vessels().get(v).id() + "' after " + failure)
          .isCloseTo(spilled, within(Math.max(A_THOUSANDTH * spilled, A_MILLILITRE)));
    }
  }
}
