package dryfloor.analysis.outcome;

import static dryfloor.analysis.installation.Plan.box;
import static dryfloor.analysis.installation.WaterAssert.assertSupplied;
import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.failure.Effect;
import dryfloor.analysis.installation.Plan;
import dryfloor.analysis.installation.Trial;
import dryfloor.model.element.Supply;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Mains whose pressure has fallen to 0.5 m of water (4.889 kPa) stand before a filling line that
 * rises to 1.5 m in its first 5 m, 20 mm wide, and falls to an open end from there. It is full
 * behind its tap, and the tap is opened.
 */
class BackflowByHandTest {

  /**
   * The first 5 m hold 314.16 mm² · 5 m = 1.571 L; a third of that stands up to 0.5 m, and 1.047 L
   * go back into the mains. No drinking water should be fed like that.
   */
  @Test
  void withoutProtectionTheLineRunsBackIntoTheMains() {
    Outcome outcome = afterOpening(Supply.Protection.NONE);

    assertSupplied(outcome, "mains").isCloseToLitres(-1.047);
  }

  @ParameterizedTest
  @EnumSource(
      value = Supply.Protection.class,
      names = {"AIR_GAP", "BACKFLOW_PREVENTER"})
  void nothingRunsBackThroughAnAirGapOrABackflowPreventer(Supply.Protection protection) {
    Outcome outcome = afterOpening(protection);

    assertThat(outcome.supplied()).allSatisfy(passed -> assertThat(passed.volume()).isZero());
  }

  private static Outcome afterOpening(Supply.Protection protection) {
    Plan plan =
        Plan.of("Mains without pressure")
            .storey("ground", 0)
            .floor("hall", 100)
            .supply(
                new Supply(
                    "mains",
                    "mains",
                    Supply.Kind.MAINS,
                    0,
                    OptionalDouble.of(4889),
                    OptionalDouble.empty(),
                    0,
                    protection))
            .vessel("tank", box(1, 1, 0.5), v -> v.in("hall").raised(0.8).level(0.1).fresh())
            .run(
                "filling-line",
                r ->
                    r.fromSupply("mains")
                        .to("tank", 0.4)
                        .bore(0.02)
                        .length(10)
                        .by(1.5, 5)
                        .valve("tap", 0.1, 0));
    return Trial.changing(plan.draw(), new Effect.ValveHeld("tap", 1));
  }
}
