package dryfloor.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.practice.Warning;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class WarningsCommandTest {

  private static final Warning[] EVERY_KIND = {
    new Warning.AirGapTooSmall("gully", "main-drain", "sump", -0.05, 0.024),
    new Warning.MainsInCirculation("gully", "top-off-line", "sump"),
    new Warning.CheckValveAlone("return-break", 0.034),
    new Warning.SingleSiphonBreak("return-line", "return-break"),
    new Warning.EmergencyNarrower("emergency-drain", 0.032, "main-drain", 0.044),
    new Warning.EmergencyWithValve("emergency-drain", "gate"),
    new Warning.ReservoirTooLarge("top-off", "sump", 0.12, 0.1),
    new Warning.PanDrainNarrow("tray", "tray-drain", 0.016, 0.019),
    new Warning.PanDrainTakesLess("tray", 0.0002, "return-line", 0.0005),
    new Warning.ContainmentSmall("tray", 0.1, 0.2),
    new Warning.FullBasinHeavy("tray", 2206, 2000),
    new Warning.OpenWithoutPower("gully", "solenoid"),
    new Warning.PitPumpWithoutBackup("return-pump", "tray", "plant-circuit")
  };

  @TempDir private Path folder = Path.of("");

  @Test
  void everyWarningIsASentenceWithItsFiguresAndItsSource() throws IOException {
    Desk desk = new Desk().warns(EVERY_KIND);

    assertThat(desk.run("warnings", drawing())).isZero();
    assertThat(desk.out().replaceAll("\\s+", " "))
        .contains(
            "13 warnings from published rules and common practice.",
            "ends 50 mm below the rim of the sump: at least 24 mm above it",
            "34 L reach floors",
            "(32 mm) is narrower than the main drain (44 mm)",
            "holds 120 L, and the sump with what shares its water has room for 100 L",
            "is 16 mm wide, too narrow",
            "weighs 2.2 kN/m² on its own area; ordinary floors are built for some 2.0 kN/m²",
            "(common practice)",
            "(CIRIA C736 (2014), for tanks of chemicals)",
            "Take care");
  }

  @Test
  void usReadersGetPoundsAndInches() throws IOException {
    Desk desk = new Desk().warns(EVERY_KIND);
    desk.run("warnings", drawing(), "--units", "us");
    assertThat(desk.out().replaceAll("\\s+", " ")).contains("46 lb/ft²", "0.63 in wide");
  }

  @Test
  void aDrawingWithoutWarningsSaysWhatWasNotLookedAt() throws IOException {
    Desk desk = new Desk();
    assertThat(desk.run("warnings", drawing())).isZero();
    assertThat(desk.out()).contains("No rule that is looked at", "joints where nobody sees them");
  }

  @Test
  void jsonTellsTheSame() throws IOException {
    Desk desk = new Desk().warns(EVERY_KIND);
    assertThat(desk.run("warnings", drawing(), "--json")).isZero();
    JsonNode list = JsonMapper.shared().readTree(desk.out()).path("drawings").path(0);
    assertThat(list.path("warnings").size()).isEqualTo(13);
    assertThat(list.path("warnings").path(0).path("rule").asString()).isEqualTo("AIR_GAP");
    assertThat(list.path("warnings").path(0).path("source").asString()).contains("EN 1717");
  }

  private String drawing() throws IOException {
    return DrawingFiles.sound(folder, "shop.json").toString();
  }
}
