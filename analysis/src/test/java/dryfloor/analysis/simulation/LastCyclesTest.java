package dryfloor.analysis.simulation;

import static dryfloor.analysis.installation.Plan.box;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.installation.InTurn;
import dryfloor.analysis.installation.Plan;
import dryfloor.analysis.installation.Trial;
import dryfloor.analysis.outcome.Ending;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.model.Installation;
import dryfloor.model.element.Control.LevelSwitch.Action;
import org.junit.jupiter.api.Test;

/**
 * A vat of 0.5 m² leaks at its seam, 20 mm² under 195 mm of water on average: 0.61 · 20e-6 · √(2 g
 * 0.195) = 23.86 mL/s. A switch keeps it between 190 and 200 mm with 0.5 L/s: it falls for 5 L /
 * 23.86 mL/s = 209.6 s and rises for 5 L / 476.1 mL/s = 10.5 s, four times in a quarter of an hour.
 */
class LastCyclesTest {

  private static final double LEAK = 23.86e-6;

  @Test
  void aLevelThatComesAndGoesIsToldByItsMeanNotItsMoment() {
    // The store of 1 m² gives in steps of 5.25 L, 23.86 mL/s on the whole, at no moment so much.
    Outcome outcome = Trial.after(vatKeptBySwitch("hall", 1).draw(), new Failure.SeamLeaks("vat"));

    Ending.StillMoving moving = (Ending.StillMoving) outcome.ending();
    assertThat(moving.place()).isEqualTo("store");
    assertThat(moving.speed()).isCloseTo(-LEAK, withPercentage(1));
  }

  @Test
  void aLevelThatGoesUpAndDownToNoEffectIsToldSo() {
    // What leaks falls back into the store in which the vat stands.
    Outcome outcome = Trial.after(vatKeptBySwitch("store", 2).draw(), new Failure.SeamLeaks("vat"));

    Ending.UpAndDown swinging = (Ending.UpAndDown) outcome.ending();
    assertThat(swinging.place()).isEqualTo("vat");
    assertThat(swinging.highest() - swinging.lowest()).isCloseTo(0.01, within(1e-4));
    assertThat(swinging.period()).isCloseTo(209.6 + 10.5, withPercentage(1));
  }

  /**
   * Half of what was taken from the leaking vat is poured back, twice, the last time 170 s before
   * somebody comes. In the last quarter of the 470 s it stands at some 200 − 2 · 20 − 19 = 141 mm
   * and falls by what leaks, 0.61 · 20e-6 · √(2 g 0.141) = 20.3 mL/s.
   */
  @Test
  void whatSomebodyTookAndPouredIsNoCycle() {
    Outcome outcome =
        InTurn.in(leakingVat())
            .begins(0, "seam-leaks.vat")
            .takes(60, "vat", 0.020, 0)
            .pours(120, "vat", 0.010, 0)
            .takes(240, "vat", 0.020, 0)
            .pours(300, "vat", 0.010, 0)
            .happen();

    Ending.StillMoving moving = (Ending.StillMoving) outcome.ending();
    assertThat(moving.place()).isEqualTo("vat");
    assertThat(moving.speed()).isCloseTo(-20.3e-6 / 0.5, withPercentage(1));
  }

  private static Installation leakingVat() {
    return Plan.of("Taken and poured")
        .away(170)
        .storey("ground", 0)
        .floor("hall", 100)
        .vessel("vat", box(1, 0.5, 0.5), v -> v.in("hall").level(0.2).fresh())
        .draw();
  }

  private static Plan vatKeptBySwitch(String ground, double storeWidth) {
    Plan plan =
        Plan.of("Kept by a switch")
            .away(700)
            .storey("ground", 0)
            .floor("hall", 100)
            .circuit("main");
    return plan.vessel("store", box(1, storeWidth, 0.8), v -> v.in("hall").level(0.5).fresh())
        .vessel("vat", box(1, 0.5, 0.5), v -> v.in(ground).raised(1).level(0.2).fresh())
        .run(
            "fill",
            r ->
                r.from("store", 0.02)
                    .to("vat", 0.45)
                    .length(3)
                    .bore(0.02)
                    .dosingPump("pump", 0.2, "main", 0, 1000, 0.5, 999, 0.5001, 0))
        .levelSwitch("keeper", "vat", 0.19, 0.2, Action.FILLS, "pump");
  }
}
