package dryfloor.app.paper;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.mark.VesselMarks;
import dryfloor.analysis.mark.VesselMarks.PowerLoss;
import dryfloor.app.report.Amounts;
import dryfloor.app.report.Wording;
import dryfloor.app.sample.SampleInstallation;
import dryfloor.model.unit.Units;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class MarkHeightsTest {

  private static final Amounts AMOUNTS = new Amounts(Units.METRIC);

  @Test
  void whatStandsAtTheRimAndRunsOverSaysSoInPlaceOfNoFreeboard() {
    assertThat(after(0.400, PowerLoss.WETS_A_FLOOR))
        .isEqualTo("at the rim, and runs over onto a floor");
    assertThat(after(0.400, PowerLoss.RUNS_OVER)).isEqualTo("at the rim, and runs over");
    assertThat(after(0.380, PowerLoss.RUNS_OVER)).isEqualTo("20 mm below the rim, having run over");
    assertThat(after(0.380, PowerLoss.KEEPS)).isEqualTo("20 mm below the rim");
  }

  @Test
  void stripAndListCallTheHighestLevelTheSameAndNotSafe() throws IOException {
    VesselMarks marks =
        new VesselMarks("sump", 0, 0.400, 0.220, 0.380, OptionalDouble.of(0.300), PowerLoss.KEEPS);

    assertThat(strip(marks).lines())
        .extracting(MarkStrip.Line::words)
        .contains("Highest level, running: 100 mm below the rim, 300 mm above the bottom");
    assertThat(Files.readString(Path.of("src/main/jte/marks.jte")))
        .contains(">" + MarkHeights.HIGHEST + "<")
        .doesNotContainIgnoringCase("safe");
  }

  @Test
  void theStripSaysWhatTheHighestLevelIsWhileAPowerLossWetsAFloorAnyway() {
    VesselMarks marks =
        new VesselMarks(
            "sump",
            0,
            0.400,
            0.220,
            0.380,
            OptionalDouble.of(0.300),
            PowerLoss.KEEPS_WHILE_A_FLOOR_GETS_WET);
    assertThat(strip(marks).said())
        .isEqualTo(
            "Up to the highest level, running, no single failure wets a floor that wets none"
                + " today. A power loss does today.");
  }

  @Test
  void aStripFromWhichAPowerLossWetsAFloorSaysThatNoLevelIsSafe() {
    MarkStrip strip = strip(sump(0.400, PowerLoss.WETS_A_FLOOR));
    assertThat(strip.said()).startsWith("NO SAFE LEVEL: at the normal level a power loss already");
    assertThat(strip.lines())
        .extracting(MarkStrip.Line::words)
        .containsExactly(
            "After a power loss: at the rim, and runs over onto a floor, 400 mm above the bottom",
            "Normal level: 180 mm below the rim, 220 mm above the bottom");
  }

  private static MarkStrip strip(VesselMarks marks) {
    return MarkStrips.of(
            Wording.of(SampleInstallation.get(), Units.METRIC), List.of(marks), PaperSize.A4)
        .getFirst();
  }

  private static String after(double level, PowerLoss powerLoss) {
    return MarkHeights.belowAfterPowerLoss(AMOUNTS, sump(level, powerLoss));
  }

  private static VesselMarks sump(double afterPowerLoss, PowerLoss powerLoss) {
    return new VesselMarks(
        "sump", 0, 0.400, 0.220, afterPowerLoss, OptionalDouble.empty(), powerLoss);
  }
}
