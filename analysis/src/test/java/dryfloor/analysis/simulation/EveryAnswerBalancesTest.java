package dryfloor.analysis.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.analysis.failure.Effect;
import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.failure.FailureResolver;
import dryfloor.analysis.installation.Named;
import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.network.Place;
import dryfloor.model.Installation;
import java.util.List;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Failures of every named and every shipped installation: no drop and no salt is lost. {@link
 * Named#failures} says how many of a large one.
 */
class EveryAnswerBalancesTest {

  @ParameterizedTest
  @MethodSource("dryfloor.analysis.installation.Named#all")
  void waterAndSaltBalanceInEveryFailure(Named named) {
    Course normal = normal(named.installation());
    SoftAssertions softly = new SoftAssertions();
    softly.check(() -> balances(normal, "normal operation"));
    for (Failure failure : named.failures()) {
      softly.check(
          () -> balances(after(normal, named.installation(), failure), FailureNames.id(failure)));
    }
    softly.assertAll();
  }

  private static void balances(Course course, String what) {
    Balance.holds(course, what);
    Balance.nothingIsOverdrawn(course, what);
  }

  @ParameterizedTest
  @MethodSource("dryfloor.analysis.installation.Named#all")
  void waterThatHasComeToRestStaysThere(Named named) {
    Course normal = normal(named.installation());
    Course again = Simulation.ofFailure(normal, normal.network(), Accuracy.USUAL, () -> false);
    levelsStay(normal, again, named + " in normal operation");

    Course lost = after(normal, named.installation(), new Failure.BuildingLosesPower());
    Course lostAgain = Simulation.ofFailure(lost, lost.network(), Accuracy.USUAL, () -> false);
    levelsStay(lost, lostAgain, named + " without power");
  }

  private static void levelsStay(Course before, Course after, String what) {
    for (int place = 0; place < before.volumesBefore.length; place++) {
      Place where = before.network().places().get(place);
      boolean shown =
          switch (where.kind()) {
            case VESSEL, BASIN, FLOOR -> true;
            case COLUMN, TEE, DEVICE, SUPPLY, DRAIN, BEYOND, OUTSIDE -> false;
          };
      if (shown) {
        assertThat(where.table().level(after.state().volumes[place]))
            .as("level of " + where.id() + ", " + what)
            .isCloseTo(where.table().level(before.state().volumes[place]), within(1e-4));
      }
    }
  }

  private static Course normal(Installation installation) {
    return Simulation.ofNormalOperation(
        FlowNetwork.of(installation, List.of()), Accuracy.USUAL, () -> false);
  }

  private static Course after(Course normal, Installation installation, Failure failure) {
    List<Effect> effects = FailureResolver.resolve(installation, failure);
    try {
      return Simulation.ofFailure(
          normal, FlowNetwork.of(installation, effects), Accuracy.USUAL, () -> false);
    } catch (NoAnswer noAnswer) {
      throw new AssertionError(FailureNames.id(failure) + ": " + noAnswer.reason(), noAnswer);
    }
  }
}
