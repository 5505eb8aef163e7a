package dryfloor.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.app.report.Ink;
import dryfloor.model.file.InstallationFile;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A sheet is written, filled in and given back. */
class RehearseCommandTest {

  private static final Path DRAWING = Path.of("..", "scenarios", "first-look", "corrected.json");

  @TempDir private Path folder = Path.of("");
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @Test
  void whatWasExpectedFitsAndIsKeptWithItsDate() throws IOException {
    Path sheet = filled("203", "60");
    assertThat(rehearse(sheet)).isZero();
    assertThat(out.toString()).contains("fits   Sump").doesNotContain("DIFFERS");
    assertThat(Files.readString(folder.resolve("corrected.rehearsal.2026-11-26.json")))
        .contains("\"failure\" : \"power-lost.building\"", "\"measuredBelowRim_mm\" : 203");
  }

  @Test
  void theSecondRecordOfADayStandsBesideTheFirst() throws IOException {
    rehearse(filled("203", "60"));
    rehearse(filled("183", "60"));
    assertThat(Files.readString(folder.resolve("corrected.rehearsal.2026-11-26.json")))
        .contains("\"measuredBelowRim_mm\" : 203", "\"withinTolerance\" : true")
        .doesNotContain("false");
    assertThat(Files.readString(folder.resolve("corrected.rehearsal.2026-11-26.2.json")))
        .contains("\"measuredBelowRim_mm\" : 183", "\"withinTolerance\" : false");
  }

  @Test
  void aSumpThatWasFilledHigherIsFoundByRunningItAgain() throws IOException {
    // 20 mm more in the sump stay 20 mm more: the display is governed by its overflow edge.
    Path sheet = filled("183", "60");
    assertThat(rehearse(sheet)).isEqualTo(1);
    assertThat(out.toString())
        .containsSubsequence(
            "DIFFERS  Sump: 183 mm below the rim, expected 203 mm (+20 mm in level)",
            "the sump was filled 20 mm higher than drawn: 0 mm are left unexplained");
  }

  @Test
  void mistakesInASheetAreToldWithTheirLine() throws IOException {
    Path sheet =
        Files.writeString(
            folder.resolve("sheet.csv"),
            "failure,vessel,measured_below_rim_mm\npower-lost.building,sump,deep\nx,sump,3\n");
    assertThat(rehearse(sheet)).isEqualTo(2);
    assertThat(err.toString()).contains("'deep' is no depth", ":2:", "'x' with 'sump'", ":3:");
  }

  /** The sheet of the drawing with what was measured after a power loss. */
  private Path filled(String sump, String display) throws IOException {
    assertThat(run("report", DRAWING.toString(), "--form", "csv", "--to", folder.toString()))
        .isZero();
    Path sheet = folder.resolve("corrected.rehearsal.csv");
    String text =
        Files.readString(sheet)
            .lines()
            .map(
                line ->
                    line.startsWith("power-lost.building,sump,")
                        ? line.replaceFirst(",,$", "," + sump + ",A. Tester")
                        : line.startsWith("power-lost.building,display,")
                            ? line.replaceFirst(",,$", "," + display + ",A. Tester")
                            : line)
            .collect(Collectors.joining("\n"));
    return Files.writeString(sheet, text);
  }

  private int rehearse(Path sheet) {
    return run(
        "rehearse",
        DRAWING.toString(),
        sheet.toString(),
        "--to",
        folder.toString(),
        "--date",
        "2026-11-26");
  }

  private int run(String... arguments) {
    Surface surface =
        new Surface(new Output(out, false), new Output(err, false), Ink.PLAIN, Ink.PLAIN, false);
    return new CommandLines(
            new Workplace(InstallationFile::read, new SweepAnalyst(), surface),
            file -> {},
            Map.of())
        .run(arguments);
  }
}
