package dryfloor.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.app.paper.Fingerprint;
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
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

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
            "As drawn, on average 10 mm are left unexplained, at most 20 mm.",
            "the sump was filled 20 mm higher than drawn: on average 0 mm are left unexplained, at",
            "0 mm");
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

  @Test
  void theLevelBeforeIsInTheRecordBesideWhatWasExpectedThen() throws IOException {
    assertThat(rehearse(filled(",238,203,A. Tester", ",,60,A. Tester"))).isZero();
    assertThat(out.toString())
        .contains("fits   Sump before: 238 mm below the rim, expected 238 mm");
    JsonNode record =
        JsonMapper.shared()
            .readTree(folder.resolve("corrected.rehearsal.2026-11-26.json").toFile());
    assertThat(record.get("sha256").asString()).isEqualTo(Fingerprint.of(DRAWING));
    assertThat(record.get("sheetMadeFor_sha256")).isEqualTo(record.get("sha256"));
    JsonNode levels = record.get("rehearsed").get(0).get("levels");
    assertThat(levels.get(0).has("measuredBeforeBelowRim_mm")).isFalse();
    assertThat(levels.get(1).get("measuredBeforeBelowRim_mm").asDouble()).isEqualTo(238);
    assertThat(levels.get(1).get("expectedBeforeBelowRim_mm").asDouble()).isBetween(237.0, 238.5);
  }

  @Test
  void aLevelThatWasOffBeforeIsOutOfTolerance() throws IOException {
    assertThat(rehearse(filled(",218,203,A. Tester", ",,60,A. Tester"))).isEqualTo(1);
    assertThat(out.toString()).contains("DIFFERS  Sump before: 218 mm", "fits   Sump: 203 mm");
  }

  @Test
  void aSheetOfAnotherVersionIsTold() throws IOException {
    Path sheet = filled("203", "60");
    Files.writeString(
        sheet, Files.readString(sheet).replace(Fingerprint.of(DRAWING), "0".repeat(64)));
    assertThat(rehearse(sheet)).isZero();
    assertThat(err.toString()).contains("made for another version of this drawing");
    assertThat(Files.readString(folder.resolve("corrected.rehearsal.2026-11-26.json")))
        .contains("\"sheetMadeFor_sha256\" : \"" + "0".repeat(64));
  }

  @Test
  void whoeverMeasuresInInchesFillsInInches() throws IOException {
    assertThat(
            run(
                "report",
                DRAWING.toString(),
                "--form",
                "csv",
                "--units",
                "us",
                "--to",
                folder.toString()))
        .isZero();
    Path sheet = folder.resolve("corrected.rehearsal.csv");
    assertThat(Files.readString(sheet)).contains("measured_below_rim_in").doesNotContain("_mm");
    // 203 mm are 7.99 in.
    fill(sheet, ",,7.99,A. Tester", ",,2.36,A. Tester");
    assertThat(rehearse(sheet)).isZero();
    assertThat(out.toString()).contains("fits   Sump: 203 mm below the rim, expected 203 mm");
  }

  /** The sheet of the drawing with what was measured after a power loss. */
  private Path filled(String sump, String display) throws IOException {
    assertThat(run("report", DRAWING.toString(), "--form", "csv", "--to", folder.toString()))
        .isZero();
    boolean all = sump.startsWith(",");
    return fill(
        folder.resolve("corrected.rehearsal.csv"),
        all ? sump : ",," + sump + ",A. Tester",
        all ? display : ",," + display + ",A. Tester");
  }

  /** Writes into the blanks of two lines: before, after, by whom. */
  private static Path fill(Path sheet, String sump, String display) throws IOException {
    String text =
        Files.readString(sheet)
            .lines()
            .map(
                line ->
                    line.startsWith("power-lost.building,sump,")
                        ? line.replaceFirst(",,,(?=,)", sump)
                        : line.startsWith("power-lost.building,display,")
                            ? line.replaceFirst(",,,(?=,)", display)
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
