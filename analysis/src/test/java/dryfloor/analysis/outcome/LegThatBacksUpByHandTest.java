package dryfloor.analysis.outcome;

import static dryfloor.analysis.installation.Plan.box;
import static dryfloor.analysis.installation.WaterAssert.carried;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import dryfloor.analysis.installation.PipeByHand;
import dryfloor.analysis.installation.Plan;
import dryfloor.analysis.installation.Trial;
import dryfloor.model.part.Part;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * A leg beyond the crest that can't carry what comes over it backs up to the crest. Then the pipe
 * is full, holds no more than fits in it, and passes what the whole of it lets.
 */
class LegThatBacksUpByHandTest {

  private static final double AWAY = 20000;

  /** Of fresh water at 25 °C (m²/s): 0.8901 mPa s (IAPWS 2008) over 997.05 kg/m³ (EOS-80). */
  private static final double VISCOSITY = 0.8901e-3 / 997.05;

  /** 35.8 m of 20 mm: 314.16 mm² · 35.8 m = 11.247 L. */
  private static final double HOLDS = 11.247e-3;

  /**
   *
   *
   * <pre>
   * A pump of 6 m at any flow lifts from −2.65 m over a crest at 2.3 m, 5.3 m along. Up to there it
   * could lift some 40 L/min, but the next 30 m fall by 0.6 m only and carry 8 by themselves. Water
   * stands in all of them, up to a hole in the air at 1.65 m, 35.4 m along. Were the pipe full to
   * its outlet, 0.4 m further on under the display's water at 1.49 m, the water behind the hole
   * would stand at 1.49 m and what the last bit loses, some 0.06 m: below the hole, which takes air.
   * So the pump's 6 m go into 4.30 m up to the hole and 1.70 m of friction and entrance (0.75), in
   * 35.4 m.
   * </pre>
   */
  @Test
  void aHoleInTheAirEndsTheFullPipeThere() {
    double byHand = new PipeByHand(0.02, 35.4, 1.5e-6, 0.75, VISCOSITY).flow(6 - (1.65 + 2.65));

    Outcome outcome = Trial.normal(house(Optional.empty()).draw());

    assertThat(carried(outcome, "return", "sump", "display") / AWAY)
        .isCloseTo(byHand, withPercentage(0.5));
    assertThat(standing(outcome)).isCloseTo(HOLDS, withPercentage(0.1));
  }

  /**
   *
   *
   * <pre>
   * The hole belongs to the display's water, which has fallen below it: the pipe's end is all that
   * counts then, 1.49 m above the datum. That is 1.86 m of head for 35.8 m and 1.5 velocity heads.
   * The pressure over the crest is that of some 1.8 m of water.
   * </pre>
   */
  @Test
  void withItsHoleBareTheLegStillHoldsNoMoreThanItsPipe() {
    double byHand = new PipeByHand(0.02, 35.8, 1.5e-6, 1.5, VISCOSITY).flow(6 - (1.49 + 2.65));

    Outcome outcome = Trial.normal(house(Optional.of("display")).draw());

    assertThat(carried(outcome, "return", "return", "display") / AWAY)
        .isCloseTo(byHand, withPercentage(1));
    assertThat(standing(outcome)).isBetween(0.99 * HOLDS, 1.06 * HOLDS);
  }

  private static double standing(Outcome outcome) {
    return outcome.ledger().standing().stream()
        .filter(s -> s.id().equals("return"))
        .mapToDouble(Ledger.Standing::after)
        .sum();
  }

  private static Plan house(Optional<String> coveredBy) {
    return Plan.of("Leg that backs up")
        .away(AWAY)
        .storey("cellar-storey", -3)
        .floor("cellar", 1e9)
        .storey("ground", 0)
        .floor("hall", 1e9)
        .circuit("main")
        .vessel("display", box(1e3, 1e3, 1), v -> v.in("hall").raised(0.9).level(0.59).fresh())
        .vessel("sump", box(1e3, 1e3, 0.6), v -> v.in("cellar").raised(0.05).level(0.3).fresh())
        .run(
            "return",
            r ->
                r.from("sump", 0.04)
                    .to("display", 0.56)
                    .bore(0.02)
                    .length(35.8)
                    .by(2.3, 5.3)
                    .by(1.7, 35.3)
                    .dosingPump("pump", 0.1, "main", 0, 6, 100, 5.99)
                    .parts(new Part.SiphonBreak("hole", "hole", 35.4, 1.65, 0.006, 1, coveredBy)));
  }
}
