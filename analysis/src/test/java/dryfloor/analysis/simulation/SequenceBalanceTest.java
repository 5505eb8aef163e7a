package dryfloor.analysis.simulation;

import dryfloor.analysis.failure.Effect;
import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureCatalogue;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.failure.FailureResolver;
import dryfloor.analysis.installation.EverythingHouse;
import dryfloor.analysis.installation.InTurn;
import dryfloor.analysis.network.FlowNetwork;
import dryfloor.model.Installation;
import java.util.List;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;

/** No drop and no salt is lost where one thing after the other is built in and taken out again. */
class SequenceBalanceTest {

  private static final double MINUTE = 60;

  /** Power goes and comes back while it lasts, and somebody fills up the sump and empties it. */
  @Test
  void waterAndSaltBalanceWhicheverFailureBeginsAndEnds() {
    Installation house = EverythingHouse.asDrawn();
    Course normal =
        Simulation.ofNormalOperation(FlowNetwork.of(house, List.of()), Accuracy.USUAL, () -> false);
    SoftAssertions softly = new SoftAssertions();
    for (Failure failure : FailureCatalogue.of(house)) {
      String id = FailureNames.id(failure);
      if (failure instanceof Failure.NobodyComesBack
          || failure instanceof Failure.BuildingLosesPower) {
        continue;
      }
      softly.check(
          () -> {
            Course course =
                after(
                    normal,
                    InTurn.in(house)
                        .begins(10 * MINUTE, id)
                        .begins(20 * MINUTE, "power-lost.building")
                        .pours(25 * MINUTE, "sump", 0.01)
                        .takes(30 * MINUTE, "sump", 0.02, 0.05)
                        .ends(40 * MINUTE, id)
                        .ends(50 * MINUTE, "power-lost.building")
                        .takes(55 * MINUTE, "sump", 10, 0)
                        .pours(57 * MINUTE, "sump", 0.1, 20)
                        .begins(60 * MINUTE, id));
            Balance.holds(course, id);
            Balance.nothingIsOverdrawn(course, id);
          });
    }
    softly.assertAll();
  }

  private static Course after(Course normal, InTurn events) {
    List<Effect> effects = FailureResolver.resolve(events.drawing(), InTurn.failure());
    return Simulation.ofFailure(
        normal, FlowNetwork.of(events.drawing(), effects), Accuracy.USUAL, () -> false);
  }
}
