package dryfloor.analysis.band;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.installation.DisplayAboveSump;
import dryfloor.analysis.installation.OnlyWith;
import dryfloor.analysis.outcome.Verdict;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.Progress;
import dryfloor.model.Installation;
import dryfloor.model.Redrawn;
import dryfloor.model.part.Part;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * A band of {@link DisplayAboveSump} with its return outlet at 200 mm and its chamber filled to
 * 291.9 mm, worked out by hand. {@code LimitsByHandTest} has the sums: there are 981.358 L in all,
 * and with the siphon break at b (m above the display's bottom), after power loss,
 *
 * <pre>
 *   upstairs stay                              1260 b + 0.442 L
 *   sump, chamber and pipes hold               351.570 L
 *   the drain, whose end at 470 mm is 30 mm
 *     under water then: of its 4.5 m over 3.91 m
 *     of height 0.0345 m at 1.9635 L/m            0.068 L
 *   and the tray below them                     68.000 L
 * </pre>
 */
class BandsByHandTest {

  private static final Failure POWER_LOST = new Failure.BuildingLosesPower();
  private static final double DISPLAY = 3.8;
  private static final double CHAMBER = 0.02;

  private static Installation house(double siphonBreak) {
    Installation drawn = new DisplayAboveSump().outletAt(0.2).plan().draw();
    Installation filled =
        Redrawn.vessel(drawn, "chamber", chamber -> chamber.withLevel(CHAMBER + 0.2919));
    Installation broken =
        Redrawn.part(
            filled,
            "siphon-break",
            part -> ((Part.SiphonBreak) part).withElevation(DISPLAY + siphonBreak));
    return OnlyWith.failures(broken, POWER_LOST::equals);
  }

  /**
   *
   *
   * <pre>
   *   b            upstairs      below         into the tray     on the floor
   *   448 mm       564.922       416.436        64.798              0
   *   443 mm       558.622       422.736        71.098              3.098 L
   *   453 mm       571.222       410.136        58.498              0
   * </pre>
   */
  @Test
  void powerLossWithASiphonBreakThatMayBeFiveMillimetresOff() throws BaselineProblem {
    Measured measured = new Measured(house(0.448)).siphonBreak("siphon-break", 0.005);

    BandResult result = Bands.of(measured, Optional.empty(), 1, Progress.NONE);

    Band band = result.bands().getFirst();
    assertThat(result.bands()).hasSize(1);
    assertThat(verdict(band.drawn())).isEqualTo(Verdict.CAUGHT);
    assertThat(verdict(band.worst().figures())).isEqualTo(Verdict.WET);
    assertThat(band.worst().point()).isEqualTo(new Point(List.of(-1.0)));
    assertThat(verdict(band.best().figures())).isEqualTo(Verdict.CAUGHT);
    assertThat(band.onFloors().from()).isZero();
    assertThat(band.onFloors().to()).isCloseTo(3.098e-3, within(2e-6));
    assertThat(band.isOpen()).isTrue();
    assertThat(band.most().orElseThrow().verdicts()).isEqualTo(1);
    assertThat(result.points()).as("as drawn, lower end, upper end").isEqualTo(3);
    assertThat(result.everyCorner()).isTrue();
  }

  /**
   * Each of two values alone leaves the floor dry; at their worse ends together they do not.
   *
   * <pre>
   *   b = 450 mm, the chamber as filled:  below 413.916, into the tray   62.278 of 68 L
   *   b = 447 mm, 3 mm lower:             1260 · 0.003 = 3.780 more      66.058     dry
   *   the chamber 9 mm fuller:            300 · 0.009 = 2.700 more       64.978     dry
   *   both                                                               68.758     0.758 L over
   * </pre>
   */
  @Test
  void twoValuesThatOnlyTogetherWetTheFloor() throws BaselineProblem {
    Measured measured =
        new Measured(house(0.45)).siphonBreak("siphon-break", 0.003).level("chamber", 0.009);

    BandResult result = Bands.of(measured, Optional.empty(), 2, Progress.NONE);

    Band band = result.bands().getFirst();
    assertThat(result.points()).as("as drawn, 4 ends alone, 4 corners").isEqualTo(9);
    assertThat(band.swings()).allMatch(swing -> swing.verdicts() == 0);
    assertThat(band.worst().point()).isEqualTo(new Point(List.of(-1.0, 1.0)));
    assertThat(verdict(band.worst().figures())).isEqualTo(Verdict.WET);
    assertThat(band.onFloors().to()).isCloseTo(0.758e-3, within(2e-6));
  }

  private static Verdict verdict(Figures figures) {
    return ((Figures.Known) figures).verdict();
  }
}
