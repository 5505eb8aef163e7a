package dryfloor.app.paper;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.app.sample.ShippedDrawing;
import dryfloor.model.unit.Units;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The worksheet for other programs, to which a name is a name. */
class WorksheetFilesTest {

  private static final Question QUESTION =
      SampleReport.question(ShippedDrawing.read("first-look/as-drawn.json"), Units.METRIC);
  private static final Report REPORT = ReportWords.of(QUESTION);

  @Test
  void theValuesHaveOneLineForEachFailure() {
    List<String> lines = WorksheetCsv.of(REPORT).lines().toList();
    assertThat(lines).hasSize(50);
    assertThat(lines.getFirst())
        .isEqualTo(
            "Severity,Item,Function,Failure mode,Cause,Local effect,Final effect,Occurrence,"
                + "Detection,Present control,Recommended action,Failure id");
    assertThat(lines.get(1)).startsWith("5,Display,holds water,Display bursts");
  }

  @ParameterizedTest
  @ValueSource(strings = {"=cmd|'/c calc'!A0", "+1", "-2+3", "@SUM(1)"})
  void noNameBecomesAFormula(String name) throws IOException {
    Report report = SampleReport.of(SampleReport.named(name), Units.METRIC);
    assertThat(WorksheetCsv.of(report)).contains("'" + name).doesNotContain("," + name);
    String sheet = part(WorksheetSpreadsheet.of(report), "xl/worksheets/sheet1.xml");
    assertThat(sheet).doesNotContain("<f>");
  }

  @Test
  void theSpreadsheetHasNumbersWhereNumbersAre() throws IOException {
    byte[] book = WorksheetSpreadsheet.of(REPORT);
    assertThat(part(book, "xl/worksheets/sheet1.xml")).containsPattern("<c r=\"A2\"[^>]*><v>5</v>");
    assertThat(part(book, "xl/sharedStrings.xml"))
        .contains("Display bursts and loses all its water at once", "2026-11-26", "IEC 60812");
  }

  @Test
  void marksAreNumbersInJson() {
    JsonNode root = JsonMapper.shared().readTree(ReportJson.of(REPORT, QUESTION.marks()));
    assertThat(root.get("report").asInt()).isEqualTo(1);
    assertThat(root.get("worksheet")).hasSize(49);
    assertThat(root.get("marks"))
        .filteredOn(mark -> mark.get("vessel").asString().equals("sump"))
        .singleElement()
        .satisfies(
            mark -> {
              assertThat(mark.get("rim_mm").asDouble()).isEqualTo(500);
              assertThat(mark.get("afterPowerLoss_mm").asDouble()).isBetween(296.5, 297.5);
            });
  }

  private static String part(byte[] book, String name) throws IOException {
    Path file = Files.write(Files.createTempFile("worksheet", ".xlsx"), book);
    try (ZipFile zip = new ZipFile(file.toFile())) {
      ZipEntry entry = Objects.requireNonNull(zip.getEntry(name), name);
      return new String(zip.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8);
    } finally {
      Files.delete(file);
    }
  }
}
