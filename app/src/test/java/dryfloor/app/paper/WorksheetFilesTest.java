package dryfloor.app.paper;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.limit.Remedy;
import dryfloor.analysis.limit.SingleChange;
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
    JsonNode root = JsonMapper.shared().readTree(ReportJson.of(REPORT, QUESTION));
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

  @Test
  void whatIsRehearsedIsNumbersInJson() {
    JsonNode power =
        named(JsonMapper.shared().readTree(ReportJson.of(REPORT, QUESTION)).get("rehearsals"));
    assertThat(power.get("tolerance_mm").asDouble()).isEqualTo(5);
    assertThat(power.get("levels"))
        .filteredOn(level -> level.get("vessel").asString().equals("sump"))
        .singleElement()
        .satisfies(
            sump -> {
              assertThat(sump.get("expectedBelowRim_mm").asDouble()).isBetween(202.5, 203.5);
              assertThat(sump.get("staysDry").asBoolean()).isFalse();
            });
    assertThat(power.get("levels"))
        .filteredOn(level -> level.get("staysDry").asBoolean())
        .extracting(level -> level.get("vessel").asString())
        .containsExactly("pan", "vat");
  }

  @Test
  void levelsOverTimeAndWaysOfTheWaterAreInJson() {
    JsonNode power =
        named(JsonMapper.shared().readTree(ReportJson.of(REPORT, QUESTION)).get("courses"));
    assertThat(power.get("levels"))
        .filteredOn(curve -> curve.get("vessel").asString().equals("sump"))
        .singleElement()
        .satisfies(
            curve -> {
              JsonNode levels = curve.get("level_mm");
              assertThat(levels.size()).isEqualTo(curve.get("time_s").size()).isGreaterThan(20);
              assertThat(levels.get(0).asDouble()).isBetween(262.0, 263.0);
              assertThat(levels.get(levels.size() - 1).asDouble()).isBetween(296.5, 297.5);
            });
    assertThat(power.get("ways"))
        .filteredOn(way -> way.get("path").asString().equals("main-drain"))
        .singleElement()
        .satisfies(
            way -> {
              assertThat(way.get("to").asString()).isEqualTo("sump");
              assertThat(way.get("water_L").asDouble()).isBetween(28.5, 29.5);
            });
  }

  private static JsonNode named(JsonNode list) {
    for (JsonNode one : list) {
      if (one.get("id").asString().equals("power-lost.building")) {
        return one;
      }
    }
    throw new AssertionError("no power loss in " + list);
  }

  @ParameterizedTest
  @ValueSource(strings = {"\u202E", "\u2067", "\u200F", "\u200E", "\u061C"})
  void marksThatTurnTextAroundAreSeen(String mark) throws IOException {
    Question question = SampleReport.question(SampleReport.named("Tank 3" + mark), Units.METRIC);
    Report report = ReportWords.of(question);
    String spelled = "Tank 3<U+%04X>".formatted(mark.codePointAt(0));
    assertThat(WorksheetCsv.of(report)).contains(spelled).doesNotContain(mark);
    assertThat(RehearsalCsv.of(question)).contains(spelled).doesNotContain(mark);
    assertThat(part(WorksheetSpreadsheet.of(report), "xl/sharedStrings.xml"))
        .contains(spelled.replace("<", "&lt;").replace(">", "&gt;"))
        .doesNotContain(mark);
    String json = ReportJson.of(report, question);
    assertThat(json).doesNotContain(mark);
    assertThat(JsonMapper.shared().readTree(json).get("drawing").get("name").asString())
        .isEqualTo("Tank 3" + mark);
  }

  @Test
  void actionsSayHowMuchIsToBeCaughtAndHowHighToFill() {
    // The burst return line brings 37 L to the floor; the sump may run at 301 mm.
    assertThat(REPORT.worksheet().rows())
        .filteredOn(row -> row.id().equals("parts-at-lowest-point.return-line"))
        .singleElement()
        .satisfies(row -> assertThat(row.action()).contains("have to take 37 L more"));
    assertThat(REPORT.worksheet().rows())
        .filteredOn(row -> row.id().equals("power-lost.building"))
        .singleElement()
        .satisfies(row -> assertThat(row.action()).contains("keep the sump at or below 301 mm"));
  }

  @Test
  void whereNothingMendsAFailureTheOwnerIsToldCommonPracticeAndThatNothingWasFound() {
    Failure failure = Question.Mended.worst(QUESTION.sweep(), 1).getFirst();
    Question tried =
        new Question(
            QUESTION.sweep(),
            QUESTION.wording(),
            QUESTION.scale(),
            QUESTION.drawing(),
            QUESTION.marks(),
            List.of(new Question.Mended(failure, List.of())));

    assertThat(ReportWords.of(tried).owner().better())
        .anyMatch(
            better ->
                better.contains(
                    "(common practice). Worked out here: no single change of the drawing was"
                        + " found that mends it."));
  }

  @Test
  void whatWasFoundToMendAFailureIsItsAction() {
    Failure failure = new Failure.RunPartsAtLowestPoint("return-line");
    SingleChange gap =
        new SingleChange.AirGapMade("return-line", Failure.End.SECOND, "display", 0.8, 0.1);
    Remedy remedy = new Remedy(failure, gap, QUESTION.sweep().installation(), List.of());
    Question mended =
        new Question(
            QUESTION.sweep(),
            QUESTION.wording(),
            QUESTION.scale(),
            QUESTION.drawing(),
            QUESTION.marks(),
            List.of(new Question.Mended(failure, List.of(remedy))));
    Report report = ReportWords.of(mended);
    assertThat(report.owner().better())
        .anyMatch(
            better ->
                better.startsWith(
                    "Against \u201cReturn line comes apart at its lowest point\u201d: Worked out"
                        + " here: make an air gap of 100 mm"));
    assertThat(report.worksheet().rows())
        .filteredOn(row -> row.id().equals("parts-at-lowest-point.return-line"))
        .singleElement()
        .satisfies(row -> assertThat(row.action()).contains("make an air gap of 100 mm"));
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
