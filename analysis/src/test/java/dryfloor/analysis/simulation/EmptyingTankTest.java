package dryfloor.analysis.simulation;

import static dryfloor.analysis.installation.Plan.box;
import static dryfloor.analysis.installation.Trial.timeOf;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import dryfloor.analysis.failure.Effect;
import dryfloor.analysis.installation.PipeByHand;
import dryfloor.analysis.installation.Plan;
import dryfloor.analysis.installation.RunPlan;
import dryfloor.analysis.installation.Trial;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.StoryEvent.What;
import dryfloor.model.shape.Shape;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/**
 * A tank that empties. Times are told by marks that the water falls past, so they are exact to the
 * moment of an event. What books say of the times is in the table of outside checks.
 */
class EmptyingTankTest {

  private static final double CD = 0.61;
  private static final double GRAVITY = 9.80665;

  /** Viscosity of fresh water at 25 °C: 0.8901 mPa s (IAPWS 2008) over 997.05 kg/m³ (EOS-80). */
  private static final double VISCOSITY = 0.8901e-3 / 997.05;

  @Test
  void aWideningVatEmptiesBySlices() {
    // Torricelli in a frustum: t = ∫ A(h) dh / (Cd a √(2gh)) with D = 0.6 + 0.5 h, h from 0.8 to
    // 0.2 m. A = π/4 (0.36 + 0.6 h + 0.25 h²), so the integral of A/√h is
    // π/4 (0.72 h^0.5 + 0.4 h^1.5 + 0.1 h^2.5).
    Plan plan = tank(new Shape.Frustum(0.6, 1.1, 1), 0.8).mark("mark", "tank", 0.2);

    double time = timeThroughHole(plan, 50e-6, "mark");

    double expected = (vat(0.8) - vat(0.2)) / (CD * 50e-6 * Math.sqrt(2 * GRAVITY));
    assertThat(time).isCloseTo(expected, withPercentage(0.02));
  }

  private static double vat(double h) {
    return Math.PI / 4 * (0.72 * Math.sqrt(h) + 0.4 * Math.pow(h, 1.5) + 0.1 * Math.pow(h, 2.5));
  }

  @Test
  void aTankEmptiesThroughALongPipeAsItsFrictionSays() {
    // 20 m of 25 mm, smooth plastic, against a quadrature with Colebrook's friction. Churchill's
    // factor, which the engine uses, is within 1 % of Colebrook's here, so the time within 0.5 %.
    double time = timeThroughPipe(r -> r.bore(0.025).length(20));

    PipeByHand pipe = new PipeByHand(0.025, 20, 1.5e-6, 1.5, VISCOSITY);
    assertThat(time).isCloseTo(pipe.emptying(4, 2, 0.5), withPercentage(0.5));
  }

  /** A tank of 4 m² whose bottom is 0.2 m above the outlet, from 2.0 m to 0.5 m above it. */
  private static double timeThroughPipe(Consumer<RunPlan> pipe) {
    Plan plan =
        tank(box(2, 2, 2), 1.8)
            .drain("outlet", 10.8)
            .run(
                "pipe",
                r -> pipe.accept(r.from("tank", 0).toDrain("outlet").valve("tap", 0.005, 0)))
            .mark("mark", "tank", 0.3);
    Outcome outcome = Trial.changing(plan.draw(), new Effect.ValveHeld("tap", 1));
    return timeOf(outcome, What.ACTS, "mark");
  }

  @Test
  void aPipeThatTakesAirLeavesTheTankAtItsOpening() {
    Plan plan =
        tank(box(2, 2, 2), 1.8)
            .drain("outlet", 10)
            .run("pipe", r -> r.from("tank", 0.25).toDrain("outlet").valve("tap", 0.5, 0));

    Outcome outcome = Trial.changing(plan.draw(), new Effect.ValveHeld("tap", 1));

    assertThat(outcome.vessels().getFirst().levelAfter()).isCloseTo(11.25, within(1e-4));
  }

  private static double timeThroughHole(Plan plan, double area, String mark) {
    Effect hole = new Effect.VesselLeaks("tank", 11, area, "yard");
    return timeOf(Trial.changing(plan.draw(), hole), What.ACTS, mark);
  }

  /** Fresh water in a tank whose bottom is at 11 m, high above a yard. */
  private static Plan tank(Shape shape, double level) {
    return Plan.of("One tank")
        .storey("ground", 0)
        .floor("yard", 1e6)
        .vessel("tank", shape, v -> v.in("yard").raised(11).level(level).fresh());
  }
}
