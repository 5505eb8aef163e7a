package dryfloor.analysis.band;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.installation.DisplayAboveSump;
import dryfloor.analysis.installation.OnlyWith;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.Progress;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** What holds for every band, whatever is uncertain and however much. */
class BandsPropertiesTest {

  private static final Failure POWER_LOST = new Failure.BuildingLosesPower();

  @Property(tries = 6, seed = "1")
  void whatIsDrawnLiesInTheBand(
      @ForAll @Scale(4) @DoubleRange(min = 0.001, max = 0.03) double siphonBreak,
      @ForAll @Scale(4) @DoubleRange(min = 0.001, max = 0.1) double level,
      @ForAll @Scale(4) @DoubleRange(min = 0.3, max = 0.5) double outlet)
      throws BaselineProblem {
    Measured measured =
        new Measured(
                OnlyWith.failures(
                    new DisplayAboveSump().outletAt(outlet).plan().draw(), POWER_LOST::equals))
            .siphonBreak("siphon-break", siphonBreak)
            .level("chamber", level);
    Band band = Bands.of(measured, Optional.empty(), 2, Progress.NONE).bands().getFirst();

    Figures.Known drawn = (Figures.Known) band.drawn();
    assertThat(drawn.onFloors()).isBetween(band.onFloors().from(), band.onFloors().to());
    assertThat(drawn.margin()).isBetween(band.margin().from(), band.margin().to());
    assertThat(drawn.isWorseThan(band.worst().figures())).isFalse();
    assertThat(band.best().figures().isWorseThan(drawn)).isFalse();
    assertThat(band.swings())
        .allSatisfy(
            swing -> {
              assertThat(swing.onFloors()).isLessThanOrEqualTo(band.onFloors().width());
              assertThat(swing.margin()).isLessThanOrEqualTo(band.margin().width());
            });
  }
}
