package dryfloor.analysis.simulation;

import static dryfloor.analysis.installation.Plan.box;
import static dryfloor.analysis.installation.WaterAssert.carried;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import dryfloor.analysis.installation.PipeByHand;
import dryfloor.analysis.installation.Plan;
import dryfloor.analysis.installation.RunPlan;
import dryfloor.analysis.installation.Trial;
import dryfloor.analysis.network.FlowNetwork;
import dryfloor.analysis.outcome.Note;
import dryfloor.analysis.outcome.Outcome;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/** Pressure inside pipes that flow, worked out from either end, and how low it can fall. */
class PressureInPipesTest {

  private static final double AWAY = 100;

  /** Fresh water at 25 °C: 0.890 mPa s (IAPWS R12-08) over 997.05 kg/m³. */
  private static final double VISCOSITY = 0.8927e-6;

  /** (101 325 − 3169)/(997.05 g), vapour pressure from IAPWS R7-97 (m). */
  private static final double AIR_HOLDS = 10.04;

  /**
   *
   *
   * <pre>
   * 4 m of fall over an entrance (0.5), 48 spread along and an exit (1): V²/2g = 4/49.5 = 80.8 mm.
   * Halfway, from above: 8 − (0.5 + 24 + 1) · 0.0808 = 5.939 m: what is lost, and the velocity head
   * Halfway, from below: 4 + 24 · 0.0808             = 5.939 m: the exit loses the velocity head
   * The hole at 7 m lies 1.061 m above that.
   * </pre>
   */
  @Test
  void halfwayDownThePressureLineHasLostHalfTheWayAndTheVelocityHead() {
    FullPipe pipe = pipe(r -> r.from("high", 7).to("low", 3.5));

    assertThat(pipe.holds(pipe.holes().getFirst())).isCloseTo(-1.061, within(2e-3));
  }

  /** The same pipe drawn from its lower end to its upper one, so that it runs backwards. */
  @Test
  void thePressureLineIsTheSameWhicheverEndIsDrawnFirst() {
    FullPipe pipe = pipe(r -> r.from("low", 3.5).to("high", 7));

    assertThat(pipe.holds(pipe.holes().getFirst())).isCloseTo(-1.061, within(2e-3));
  }

  /** At the entrance, 7 m, only 1.5 velocity heads are gone: 8 − 1.5 · 0.0808 = 7.879 m. */
  @Test
  void aVentAtTheEntranceHoldsWhileThePressureLineRunsAboveIt() {
    FullPipe pipe = pipe(r -> r.from("high", 7).to("low", 3.5).vented());

    assertThat(pipe.crestHolds()).isCloseTo(0.879, within(2e-3));
  }

  /** A pipe of no length to speak of, with a hole at 7 m halfway along, where nothing covers it. */
  private static FullPipe pipe(Consumer<RunPlan> ends) {
    Plan plan =
        tanks(8, 4)
            .run(
                "pipe",
                r -> {
                  r.bore(0.1).length(0.15).extraLoss(48).by(7, 0.075);
                  r.siphonBreak("hole", 0.075, "low", 7, 0.03);
                  ends.accept(r);
                });
    FlowNetwork network = FlowNetwork.of(plan.draw(), List.of());
    State state = Beginning.asDeclared(network);
    FlowField field = new FlowField(network, state);
    field.rewire();
    field.evaluate(state.volumes);
    FullPipe pipe = new FullPipe(network, state, field, 0, field.builder.through(0));
    pipe.flowIfFull();
    return pipe;
  }

  /**
   * Crest 9.5 m above the water, 9.9 m of pipe up to it. What the air holds beyond that, 0.54 m, is
   * all there is for entrance, friction and velocity head, however far the pipe falls behind.
   */
  @Test
  void aHighCrestLetsPassWhatTheAirCanLiftThereWithItsVelocity() {
    Plan plan =
        tanks(8, 1)
            .run(
                "siphon",
                r -> r.from("high", 7.5).to("low", 0.5).bore(0.1).length(30).by(17.5, 9.9));

    Outcome outcome = Trial.normal(plan.draw());

    double byHand = new PipeByHand(0.1, 9.9, 1.5e-6, 0.5 + 1, VISCOSITY).flow(AIR_HOLDS - 9.5);
    assertThat(carried(outcome, "siphon", "high", "low") / AWAY)
        .isCloseTo(byHand, withPercentage(2));
    assertThat(outcome.notes()).containsExactly(new Note.AtVapourPressure("siphon", 9.9, 17.5));
  }

  /**
   * 40 m level, then a fall of 60 m that would suck the bend down to some −26 m. It can't: the
   * level part carries what 0.99 m of water and 10.04 m of air drive through it, and what falls
   * behind the bend falls broken.
   */
  @Test
  void aLongFallBehindALevelPipeSucksNoHarderThanTheAirPushes() {
    Plan plan =
        tanks(61, 1)
            .run(
                "down",
                r -> r.from("high", 60).to("low", 0.5).bore(0.05).length(104).by(60.01, 40));

    Outcome outcome = Trial.normal(plan.draw());

    double byHand = new PipeByHand(0.05, 40, 1.5e-6, 0.5 + 1, VISCOSITY).flow(0.99 + AIR_HOLDS);
    assertThat(carried(outcome, "down", "high", "low") / AWAY).isCloseTo(byHand, withPercentage(2));
    assertThat(outcome.notes()).containsExactly(new Note.AtVapourPressure("down", 40, 60.01));
  }

  /** A tap at the foot of the fall keeps the pipe under pressure: no limit, and no note. */
  @Test
  void aFallThatIsThrottledAtItsFootHoldsTogether() {
    Plan plan =
        tanks(61, 1)
            .run(
                "down",
                r ->
                    r.from("high", 60)
                        .to("low", 0.5)
                        .bore(0.05)
                        .length(104)
                        .by(60, 40)
                        .strainer("tap", 103, 200));

    Outcome outcome = Trial.normal(plan.draw());

    double byHand = new PipeByHand(0.05, 104, 1.5e-6, 201.5, VISCOSITY).flow(60);
    assertThat(carried(outcome, "down", "high", "low") / AWAY).isCloseTo(byHand, withPercentage(2));
    assertThat(outcome.notes()).isEmpty();
  }

  private static Plan tanks(double high, double low) {
    return Plan.of("Tanks")
        .away(AWAY)
        .storey("ground", 0)
        .floor("yard", 1e9)
        .vessel("high", box(1e4, 1e4, 70), v -> v.in("yard").level(high).fresh())
        .vessel("low", box(1e4, 1e4, 70), v -> v.in("yard").level(low).fresh());
  }
}
