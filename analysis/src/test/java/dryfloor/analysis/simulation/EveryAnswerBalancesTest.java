package dryfloor.analysis.simulation;

import static dryfloor.analysis.installation.WaterAssert.assertLevel;
import static dryfloor.analysis.installation.WaterAssert.assertReached;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.analysis.failure.Effect;
import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.failure.FailureResolver;
import dryfloor.analysis.installation.Named;
import dryfloor.analysis.installation.Shipped;
import dryfloor.analysis.installation.Trial;
import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.network.Place;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.model.Installation;
import java.nio.file.Path;
import java.util.List;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
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

  /**
   * The lift pumps cycle on their switch for three days, and 80 m² of floor fall dry meanwhile. A
   * floor that still loses a hundredth of a millimetre a cycle is not yet the same as it was.
   */
  @Test
  void aFloorBesideAPumpThatCyclesOwesNoWater() {
    Installation nursery =
        Shipped.read(Path.of("..", "scenarios", "coral-nursery", "as-drawn.json"));
    balances(
        after(
            normal(nursery),
            nursery,
            new Failure.RunClogs("header-overflow", Failure.Degree.FULLY)),
        "its overflow is clogged");
  }

  /**
   * A vat of 10 m² runs over a lip at 300 mm into a chamber of 9 cm², from which a pump lifts the
   * water back until the chamber's seam lets go. What stood above the lip leaves, 10 m² · 100 mm,
   * and the chamber's 9 cm² · 400 mm; nothing can take the vat below its lip. A step of an hour
   * that follows the pump's flow on a straight line through nothing would.
   */
  @Test
  void aTinyChamberTakesNoMoreThanStandsAboveTheLip() {
    Path drawing = Path.of("src/test/resources/dryfloor/analysis/simulation/tiny-chamber.json");
    Installation installation = Shipped.read(drawing);

    Outcome outcome = Trial.after(installation, new Failure.SeamLeaks("chamber"));

    assertLevel(outcome, "vat").isWithin(0.1, 300);
    assertReached(outcome, "room").isWithin(0.8, 1000.4);
  }

  private static void balances(Course course, String what) {
    Balance.holds(course, what);
    Balance.nothingIsOverdrawn(course, what);
    Balance.noLegIsOverfull(course, what);
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
