package dryfloor.analysis.limit;

import static dryfloor.analysis.installation.Plan.box;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.installation.OnlyWith;
import dryfloor.analysis.installation.PipeByHand;
import dryfloor.analysis.installation.Plan;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.Progress;
import dryfloor.model.Installation;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Limits of two installations whose float valve sticks open, worked out by hand. */
class LimitsOfFillingByHandTest {

  private static final Failure STUCK = new Failure.FloatValveStuckOpen("float");

  private static SafeRange range(Installation house, Property property) throws BaselineProblem {
    LimitAnswer.Found found =
        (LimitAnswer.Found)
            Limits.of(house, List.of(property), 1, Progress.NONE).answers().getFirst();
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
    double shelf = 1.2;
    Installation house =
        Plan.of("Topped up by gravity")
            .away(5 * 24 * 3600)
            .storey("ground", 0)
            .floor("room", 12)
            .vessel("sump", box(0.8, 0.5, 0.5), v -> v.in("room").level(0.3007))
            .vessel(
                "reservoir",
                box(0.5, 0.4, 0.6),
                v -> v.in("room").raised(shelf).level(0.35).fresh())
            .run(
                "line",
                r ->
                    r.from("reservoir", 0.02)
                        .to("sump", 0.52)
                        .bore(0.012)
                        .length(2)
                        .floatValve("float", 2, 0.4, "sump", 0.3, 0.02))
            .draw();

    SafeRange range =
        range(OnlyWith.failures(house, STUCK::equals), new Property.RunningLevel("reservoir"));

    assertThat(range.to() - shelf).isCloseTo(0.417, within(1e-9));
    assertThat(range.above()).isEqualTo(new Decider.FloorWet(STUCK));
  }

  /**
   *
   *
   * <pre>
   * A reservoir filled from the mains, 2 m of 12 mm with a valve of Kv 0.4, stands in a bund. When
   * its float sticks the mains bring what MainsFillByHandTest works out, 0.19 L/s, over its rim. The
   * bund's drain, 1 m long, must take that before the bund is full: head from its rim at 150 mm to
   * the drain at −500 mm, ends 1.5 velocity heads.
   * </pre>
   */
  @Test
  void theNarrowestDrainOfABundThatStillTakesTheMains() throws BaselineProblem {
    double viscosity = 0.8901e-3 / 997.05;
    double area = Math.PI / 4 * 0.012 * 0.012;
    double valve = 200 * Math.pow(3600 * area / 0.4, 2);
    double inflow =
        new PipeByHand(0.012, 2, 1.5e-6, 1.5 + valve, viscosity)
            .flow(300_000 / (997.05 * 9.80665) + 0.25);
    Installation house =
        Plan.of("Reservoir in a bund")
            .away(24 * 3600)
            .storey("ground", 0)
            .floor("room", 12)
            .mains("mains", 1.5, 300_000)
            .drain("sewer", -0.5)
            .basin("bund", box(1.6, 1, 0.15), "room")
            .vessel("reservoir", box(1, 0.5, 1), v -> v.in("bund").raised(0.01).level(0.8).fresh())
            .run("bund-drain", r -> r.from("bund", 0).toDrain("sewer").bore(0.02).length(1))
            .run(
                "fill",
                r ->
                    r.fromSupply("mains")
                        .to("reservoir", 1.24)
                        .bore(0.012)
                        .length(2)
                        .floatValve("float", 1, 0.4, "reservoir", 0.8, 0.05))
            .draw();

    double narrowest =
        range(OnlyWith.failures(house, STUCK::equals), new Property.DrainBore("bund-drain")).from();

    assertThat(takes(narrowest, viscosity)).isGreaterThan(0.99 * inflow);
    assertThat(takes(narrowest - 1e-3, viscosity)).as("a millimetre less").isLessThan(inflow);
  }

  private static double takes(double bore, double viscosity) {
    return new PipeByHand(bore, 1, 1.5e-6, 1.5, viscosity).flow(0.15 + 0.5);
  }
}
