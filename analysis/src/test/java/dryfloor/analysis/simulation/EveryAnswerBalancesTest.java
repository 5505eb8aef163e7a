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
import dryfloor.analysis.network.Account;
import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.network.Pipe;
import dryfloor.analysis.network.Place;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.model.Installation;
import java.nio.file.Path;
import java.util.Arrays;
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

  /** The project's promise: of what is in the system. */
  private static final double BALANCE = 1e-9;

  /** A tenth of what the project promises for a level (m). */
  private static final double AS_GOOD_AS_EMPTY = 1e-5;

  /**
   * A leg that backs up stands as high as the pressure in it, which may be above its crest: so much
   * of its pipe it may seem to hold.
   */
  private static final double BACKED_UP = 1.06;

  /** What the project promises for a volume (m³). */
  private static final double A_MILLILITRE = 1e-6;

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
    double held = held(course);
    double[] before = course.volumesBefore;
    double[] after = course.state().volumes;
    double[] explained = before.clone();
    for (int a = 0; a < course.network().accounts().size(); a++) {
      Account account = course.network().accounts().get(a);
      double net = course.recorder.carried[0][a] - course.recorder.carried[1][a];
      explained[account.from()] -= net;
      explained[account.to()] += net;
    }
    assertThat(Arrays.stream(after).sum())
        .as("water in all, " + what)
        .isCloseTo(Arrays.stream(before).sum(), within(BALANCE * held));
    for (int place = 0; place < after.length; place++) {
      Place where = course.network().places().get(place);
      assertThat(after[place])
          .as("what came and went explains '" + where.id() + "' (" + where.kind() + "), " + what)
          .isCloseTo(explained[place], within(BALANCE * held));
      if (where.kind().isPool()) {
        double empty = where.table().volume(where.table().bottom() - AS_GOOD_AS_EMPTY);
        assertThat(after[place])
            .as("water left in '" + where.id() + "' (" + where.kind() + "), " + what)
            .isGreaterThanOrEqualTo(Math.min(empty, -A_MILLILITRE));
      }
    }
    for (Pipe pipe : course.network().pipes()) {
      for (Pipe.Leg leg : pipe.legs()) {
        assertThat(after[leg.column()])
            .as("water standing in a leg of '" + pipe.run() + "', " + what)
            .isLessThanOrEqualTo(BACKED_UP * leg.volume() + A_MILLILITRE);
      }
    }
    double salt = Arrays.stream(course.saltBefore).map(Math::abs).sum();
    assertThat(Arrays.stream(course.state().salt).sum())
        .as("salt in all, " + what)
        .isCloseTo(Arrays.stream(course.saltBefore).sum(), within(BALANCE * salt));
  }

  private static double held(Course course) {
    double held = 0;
    for (int place = 0; place < course.volumesBefore.length; place++) {
      boolean pool = course.network().places().get(place).kind().isPool();
      held += pool ? course.volumesBefore[place] : 0;
    }
    return held;
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
