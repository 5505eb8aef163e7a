package dryfloor.analysis.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.analysis.failure.Effect;
import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureCatalogue;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.failure.FailureResolver;
import dryfloor.analysis.installation.Shipped;
import dryfloor.analysis.installation.Trial;
import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.outcome.Note;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.simulation.Accuracy;
import dryfloor.analysis.simulation.OutcomeBuilder;
import dryfloor.analysis.simulation.Simulation;
import dryfloor.model.Installation;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A drain into whose drowned mouth water falls, too fast for air beside it: it may fill or not. */
class DoubtfulPrimingTest {

  @ParameterizedTest
  @CsvSource({
    "coral-nursery/corrected, parts-at-lowest-point.manifold-bar, header-feed, true",
    "first-look/as-drawn, joint-parts.return-line.pump-union, vat-drain, false"
  })
  void bothCoursesAreRunAndTheWorseIsTold(String scenario, String id, String run, boolean filled) {
    Installation house = Shipped.named(scenario);
    Failure failure = failure(house, id);

    Outcome told = Trial.after(house, failure);

    Outcome slow = course(house, failure, List.of());
    Outcome early = course(house, failure, List.of(new Effect.PrimesEarly(run)));
    assertThat(early.reachedFloors() + spilled(early))
        .isNotEqualTo(slow.reachedFloors() + spilled(slow));
    Outcome worse = isWorse(early, slow) ? early : slow;
    assertThat(isWorse(early, slow)).isEqualTo(filled);
    assertThat(told.vessels()).isEqualTo(worse.vessels());
    assertThat(told.reachedFloors()).isEqualTo(worse.reachedFloors());
    assertThat(told.notes()).contains(new Note.PrimingInDoubt(run, filled));
  }

  @Test
  void nothingIsToldOfItWhereItMakesNoDifference() {
    Installation house = Shipped.named("first-look/corrected");

    Outcome lost = Trial.after(house, new Failure.BuildingLosesPower());

    assertThat(lost.notes()).noneMatch(Note.PrimingInDoubt.class::isInstance);
  }

  private static boolean isWorse(Outcome one, Outcome other) {
    return one.reachedFloors() == other.reachedFloors()
        ? spilled(one) > spilled(other)
        : one.reachedFloors() > other.reachedFloors();
  }

  private static double spilled(Outcome outcome) {
    return outcome.vessels().stream().mapToDouble(Outcome.VesselOutcome::spilled).sum();
  }

  private static Failure failure(Installation house, String id) {
    return FailureCatalogue.of(house).stream()
        .filter(failure -> FailureNames.id(failure).equals(id))
        .findFirst()
        .orElseThrow();
  }

  private static Outcome course(Installation house, Failure failure, List<Effect> more) {
    List<Effect> effects = new ArrayList<>(FailureResolver.resolve(house, failure));
    effects.addAll(more);
    var normal =
        Simulation.ofNormalOperation(FlowNetwork.of(house, List.of()), Accuracy.USUAL, () -> false);
    return OutcomeBuilder.of(
        Simulation.ofFailure(normal, FlowNetwork.of(house, effects), Accuracy.USUAL, () -> false),
        List.of());
  }

  /** A drop more in the vat does not hide that it comes nearer to its rim. */
  @Test
  void theCourseWithLessFreeboardIsToldWhereTheWaterIsAlike() {
    Installation house = Shipped.named("first-look/as-drawn");
    Failure slip = failure(house, "second-end-slips-out.main-drain");

    Outcome told = Trial.after(house, slip);

    Outcome slow = course(house, slip, List.of());
    Outcome early = course(house, slip, List.of(new Effect.PrimesEarly("vat-drain")));
    assertThat(spilled(early)).isCloseTo(spilled(slow), within(1e-4));
    assertThat(slow.margin().freeboard()).isLessThan(early.margin().freeboard() - 1e-3);
    assertThat(told.margin().freeboard()).isEqualTo(slow.margin().freeboard());
  }
}
