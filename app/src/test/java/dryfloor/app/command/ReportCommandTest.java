package dryfloor.app.command;

import static dryfloor.app.command.Desk.answered;
import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.failure.Failure;
import dryfloor.app.paper.Fingerprint;
import dryfloor.app.sample.SampleOutcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReportCommandTest {

  @TempDir private Path folder = Path.of("");

  @Test
  void thePageCarriesItsDateAndTheFingerprintOfTheDrawing() throws IOException {
    Path drawing = DrawingFiles.sound(folder, "shop.json");
    Desk desk = new Desk();
    Path to = folder.resolve("papers").resolve("new");
    assertThat(
            desk.run("report", drawing.toString(), "--to", to.toString(), "--date", "2026-11-26"))
        .isZero();
    assertThat(desk.out()).contains("shop.report.html written");
    assertThat(Files.readString(to.resolve("shop.report.html")))
        .contains("2026-11-26", Fingerprint.of(drawing), "shop.json");
  }

  @Test
  void aWetFloorIsInTheExitCodeAsElsewhere() throws IOException {
    Path drawing = DrawingFiles.sound(folder, "shop.json");
    Desk desk = new Desk().answers(answered(new Failure.BuildingLosesPower(), SampleOutcome.wet()));
    assertThat(desk.run("report", drawing.toString(), "--to", folder.toString())).isEqualTo(1);
  }

  @Test
  void aWrongDrawingMakesNoPapers() throws IOException {
    Path drawing = DrawingFiles.wrong(folder, "shop.json");
    Desk desk = new Desk();
    assertThat(desk.run("report", drawing.toString(), "--to", folder.toString())).isEqualTo(2);
    assertThat(desk.err()).contains("level");
    assertThat(folder.resolve("shop.report.html")).doesNotExist();
  }

  @Test
  void mendsAreLookedForInTenFailuresAtMost() throws IOException {
    Path drawing = DrawingFiles.sound(folder, "shop.json");
    Desk desk = new Desk();
    assertThat(desk.run("report", drawing.toString(), "--mends", "11")).isEqualTo(2);
    assertThat(desk.err()).contains("'11' is no whole number from 0 to 10");
  }

  @Test
  void aFolderThatCantBeMadeIsTold() throws IOException {
    Path drawing = DrawingFiles.sound(folder, "shop.json");
    Path file = Files.writeString(folder.resolve("taken"), "");
    Desk desk = new Desk();
    assertThat(desk.run("report", drawing.toString(), "--to", file.toString())).isEqualTo(2);
    assertThat(desk.err()).contains("can't be written");
  }

  @Test
  void theFingerprintIsTheOneThatOtherToolsShow() throws IOException {
    Path file = Files.writeString(folder.resolve("abc"), "abc");
    // FIPS 180-4, the example "abc" of SHA-256.
    assertThat(Fingerprint.of(file))
        .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  }
}
