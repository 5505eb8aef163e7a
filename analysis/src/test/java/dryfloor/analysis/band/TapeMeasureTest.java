package dryfloor.analysis.band;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.Progress;
import dryfloor.model.Installation;
import dryfloor.model.file.InstallationFile;
import dryfloor.model.file.Reading;
import dryfloor.model.file.UncertainDrawing;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The shipped drawing that was measured with a tape, from its file; its page has the sums. */
class TapeMeasureTest {

  private static final Failure POWER_LOST = new Failure.BuildingLosesPower();

  /** A file read again wherever its values are. */
  private record FromFile(UncertainDrawing drawing) implements Uncertain {

    static FromFile of(String name) {
      Path file = Path.of("..", "scenarios", "tape-measure", name);
      return new FromFile(((Reading.Read) InstallationFile.read(file)).uncertain());
    }

    @Override
    public int values() {
      return drawing.values().size();
    }

    @Override
    public Installation at(Point point) {
      return ((Reading.Read) drawing.at(point.shares())).installation();
    }
  }

  private static Band powerLost(String name) throws BaselineProblem {
    return Bands.of(FromFile.of(name), Optional.empty(), 2, Progress.NONE).bands().stream()
        .filter(band -> band.failure().equals(POWER_LOST))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void asDrawnPowerLossIsDryAndAtTheEndsOfTwoTolerancesItIsNot() throws BaselineProblem {
    Band band = powerLost("as-drawn.json");
    assertThat(band.drawn().isDry()).isTrue();
    assertThat(((Figures.Known) band.drawn()).margin()).isCloseTo(0.015, within(5e-4));
    assertThat(band.isOpen()).isTrue();
    assertThat(band.swings()).allMatch(swing -> swing.verdicts() == 0);
  }

  @Test
  void withTheSiphonBreakFiveMillimetresHigherItIsDryWhateverTheValues() throws BaselineProblem {
    assertThat(powerLost("corrected.json").worst().figures().isDry()).isTrue();
  }
}
