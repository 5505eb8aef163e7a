package dryfloor.analysis.simulation;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.failure.FailureResolver;
import dryfloor.analysis.generated.Building;
import dryfloor.analysis.generated.Settled;
import dryfloor.analysis.generated.Tried;
import dryfloor.analysis.network.FlowNetwork;
import java.util.Optional;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/**
 * Water and salt of buildings by chance balance whenever somebody looks: the unattended time is cut
 * short anywhere from half a second to twelve days, so that every step is the last of some try.
 */
@Tried
class BalancePropertiesTest {

  private static final int FAILURES = 5;

  @Property(tries = 80, edgeCases = EdgeCasesMode.NONE)
  void waterAndSaltBalanceWheneverSomebodyLooks(
      @ForAll Building building,
      @ForAll @IntRange(max = 1000) int lot,
      @ForAll @DoubleRange(min = -0.3, max = 6) double moment) {
    Optional<Settled> settled = Settled.of(building.draw());
    Assume.that(settled.isPresent());
    holds(settled.get().normal(), "normal operation");
    for (Failure failure : settled.get().sample(FAILURES, lot)) {
      FlowNetwork failed =
          FlowNetwork.of(
              settled.get().installation(),
              FailureResolver.resolve(settled.get().installation(), failure));
      settled
          .get()
          .after(lookedAtAfter(failed, Math.pow(10, moment)), Accuracy.USUAL)
          .ifPresent(course -> holds(course, FailureNames.id(failure)));
    }
  }

  private static void holds(Course course, String what) {
    Balance.holds(course, what);
    Balance.nothingIsOverdrawn(course, what);
  }

  private static FlowNetwork lookedAtAfter(FlowNetwork network, double seconds) {
    return new FlowNetwork(
        network.installation(),
        network.water(),
        network.places(),
        network.accounts(),
        network.paths(),
        network.pipes(),
        network.tees(),
        network.parts(),
        network.controls(),
        network.effects(),
        seconds);
  }
}
