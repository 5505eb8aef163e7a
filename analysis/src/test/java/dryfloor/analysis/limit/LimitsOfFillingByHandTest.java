package dryfloor.analysis.limit;

import static dryfloor.analysis.installation.Plan.box;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.installation.OnlyWith;
import dryfloor.analysis.installation.PipeByHand;
import dryfloor.analysis.installation.Plan;
import dryfloor.analysis.installation.ReservoirInABund;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.Progress;
import dryfloor.model.Installation;
import dryfloor.model.element.Vessel;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Limits of two installations whose float valve sticks open, worked out by hand. */
class LimitsOfFillingByHandTest {

  private static final double SHELF = 1.2;
  private static final Failure STUCK = new Failure.FloatValveStuckOpen("float");

  private static SafeRange range(Installation house, Property property) throws BaselineProblem {
    return range(house, property, Bounds.DRY_FLOORS);
  }

  private static SafeRange range(Installation house, Property property, Bounds bounds)
      throws BaselineProblem {
    LimitAnswer.Found found =
        (LimitAnswer.Found)
            Limits.of(house, List.of(property), bounds, 1, Progress.NONE).answers().getFirst();
    return found.today().orElseThrow();
  }

  /**
   *
   *
   * <pre>
   * A reservoir of 0.5 · 0.4 m on a shelf tops a sump of 0.8 · 0.5 m up through a float valve; what
   * stands above its outlet, 20 mm over its bottom, runs down when the float sticks.
   *   room in the sump, from 300.7 mm to its rim at 500 mm: 0.4 · 199.3    79.72 L
   *   from the line, 2 m of 12 mm, full down to the valve at its end       0.226 L
   *   so from the reservoir 79.49 L / 0.2 m² = 397.5 mm over the outlet:   417.5 mm
   * </pre>
   */
  @Test
  void theHighestSafeLevelOfAReservoirAboveASump() throws BaselineProblem {
    SafeRange range =
        range(toppedUpByGravity(Vessel.Role.SUMP, 0.35), new Property.RunningLevel("reservoir"));

    assertThat(range.to() - SHELF).isCloseTo(0.417, within(1e-9));
    assertThat(range.above()).isEqualTo(new Decider.FloorWet(STUCK));
  }

  /**
   *
   *
   * <pre>
   * The same with the sump a refugium, of 0.4 · 300.7 = 120.28 L at 35 g/kg. It is not to end
   * fresher than 28 g/kg. Salt goes with the volume, so
   *   35 · 120.28/(120.28 + v) = 28                                        v = 30.07 L
   *   from the reservoir 30.07 − 0.226 = 29.84 L / 0.2 m² = 149.2 mm over the outlet: 169.2 mm
   * </pre>
   */
  @Test
  void theHighestLevelOfTheReservoirThatLeavesTheRefugiumSaltEnough() throws BaselineProblem {
    Bounds saltEnough =
        new Bounds(OptionalDouble.empty(), Optional.of(new Bounds.Salinities(28, 38)));

    SafeRange range =
        range(
            toppedUpByGravity(Vessel.Role.REFUGIUM, 0.15),
            new Property.RunningLevel("reservoir"),
            saltEnough);

    assertThat(range.to() - SHELF).isCloseTo(0.169, within(1e-9));
    assertThat(range.above())
        .isInstanceOfSatisfying(
            Decider.SalinityOut.class, out -> assertThat(out.salinity()).isBetween(27.95, 28.0));
  }

  private static Installation toppedUpByGravity(Vessel.Role below, double level) {
    Installation house =
        Plan.of("Topped up by gravity")
            .away(5 * 24 * 3600)
            .storey("ground", 0)
            .floor("room", 12)
            .vessel("sump", box(0.8, 0.5, 0.5), v -> v.in("room").role(below).level(0.3007))
            .vessel(
                "reservoir",
                box(0.5, 0.4, 0.6),
                v -> v.in("room").raised(SHELF).level(level).fresh())
            .run(
                "line",
                r ->
                    r.from("reservoir", 0.02)
                        .to("sump", 0.52)
                        .bore(0.012)
                        .length(2)
                        .floatValve("float", 2, 0.4, "sump", 0.3, 0.02))
            .draw();
    return OnlyWith.failures(house, STUCK::equals);
  }

  /**
   *
   *
   * <pre>
   * When the float of a reservoir in a bund sticks, the mains bring 0.19 L/s over its rim. The
   * bund's drain, 1 m long, must take that before the bund is full: head from its rim at 150 mm to
   * the drain at −500 mm, ends 1.5 velocity heads.
   * </pre>
   */
  @Test
  void theNarrowestDrainOfABundThatStillTakesTheMains() throws BaselineProblem {
    Installation house = ReservoirInABund.drainedThrough(0.02).draw();

    double narrowest =
        range(OnlyWith.failures(house, STUCK::equals), new Property.DrainBore("bund-drain")).from();

    assertThat(takes(narrowest)).isGreaterThan(ReservoirInABund.INFLOW);
    assertThat(takes(narrowest - 1e-3)).as("a millimetre less").isLessThan(ReservoirInABund.INFLOW);
  }

  private static double takes(double bore) {
    return new PipeByHand(bore, 1, 1.5e-6, 1.5, ReservoirInABund.VISCOSITY).flow(0.15 + 0.5);
  }
}
