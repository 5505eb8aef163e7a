package dryfloor.analysis.outcome;

import static dryfloor.analysis.installation.Plan.box;
import static dryfloor.analysis.installation.WaterAssert.assertLevel;
import static dryfloor.analysis.installation.WaterAssert.carried;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import dryfloor.analysis.failure.Effect;
import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.Failure.Degree;
import dryfloor.analysis.installation.Plan;
import dryfloor.analysis.installation.Trial;
import dryfloor.model.Installation;
import org.junit.jupiter.api.Test;

/**
 * How deep water stands over the lip of a standpipe of 50 mm that takes a steady flow into air,
 * clean and with half its mouth clogged.
 *
 * <pre>
 * A clean lip is a ring weir up to 0.367 · 50 = 18.4 mm: Q = 1.84 π D h^1.5 = 0.28903 h^1.5.
 * A clogged one is half of that, and beyond 18.4 mm half of the orifice,
 *   Q = 0.5 · 0.61 · 1.9635e-3 · √(2 g h) = 2.6521e-3 √h.
 * What the jet has in velocity it loses in the air of the pipe.
 * </pre>
 */
class HalfCloggedLipByHandTest {

  private static final double LIP = 300;

  @Test
  void halfTheEdgeTakesTheSameFlowSixTenthsDeeper() {
    // 0.2 L/s clean: (0.2e-3/0.28903)^(2/3) = 7.82 mm; half: (0.4e-3/0.28903)^(2/3) = 12.42 mm.
    Installation tank = tank(0.2e-3);

    assertLevel(Trial.normal(tank), "tank").isWithin(0.05, LIP + 7.82);
    assertLevel(halfClogged(tank), "tank").isWithin(0.05, LIP + 12.42);
  }

  @Test
  void halfTheHoleTakesTheFlowOfAWeirTwiceAndMoreAsDeep() {
    // 0.5 L/s clean: (0.5e-3/0.28903)^(2/3) = 14.41 mm; half: (0.5e-3/2.6521e-3)² = 35.54 mm.
    Installation tank = tank(0.5e-3);

    assertLevel(Trial.normal(tank), "tank").isWithin(0.05, LIP + 14.41);
    assertLevel(halfClogged(tank), "tank").isWithin(0.05, LIP + 35.54);
  }

  /**
   * Under water the pipe behind the clog is full, and the jet spreads in it: of the velocity head
   * that it has it loses (1/(0.61 · 0.5) − 1)² = 5.192 in velocity heads of the bore. With entrance
   * and exit 6.692 for a fall of 1 m: 1.9635e-3 · √(2 g · 1/6.692) = 3.361 L/s.
   */
  @Test
  void underWaterTheClogIsALossInAFullPipe() {
    Plan plan =
        Plan.of("Two ponds")
            .away(100)
            .storey("ground", 0)
            .floor("yard", 1e9)
            .vessel("high", box(1e4, 1e4, 9), v -> v.in("yard").level(3).fresh())
            .vessel("low", box(1e4, 1e4, 9), v -> v.in("yard").level(2).fresh())
            .run("pipe", r -> r.from("high", 1).to("low", 1).bore(0.05).length(0.01));

    Outcome outcome = Trial.changing(plan.draw(), new Effect.RunNarrowed("pipe", 0.5));

    assertThat(carried(outcome, "pipe", "high", "low") / 100)
        .isCloseTo(3.361e-3, withPercentage(0.1));
  }

  private static Outcome halfClogged(Installation tank) {
    return Trial.after(tank, new Failure.RunClogs("standpipe", Degree.BY_HALF));
  }

  /** A tank of 0.4 m² whose standpipe of 50 mm ends in the air over a drain, open at its crest. */
  private static Installation tank(double flow) {
    return Plan.of("Tank with a standpipe")
        .storey("ground", 0)
        .floor("room", 20)
        .drain("sewer", 0)
        .source("source", 2, flow)
        .vessel("tank", box(0.8, 0.5, 0.5), v -> v.in("room").raised(1).level(0.305).fresh())
        .run("filling", r -> r.fromSupply("source").to("tank", 0.45))
        .run(
            "standpipe",
            r -> r.fromLip("tank", 0.3).toDrain("sewer").bore(0.05).length(1.3).vented())
        .draw();
  }
}
