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
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * The first look as drawn and as corrected, in which only pan and vat are higher: four wet failures
 * become caught ones, and four that were caught before leave more room.
 */
class CompareCommandTest {

  private static final String DRAWN =
      Path.of("..", "scenarios", "first-look", "as-drawn.json").toString();
  private static final String CORRECTED =
      Path.of("..", "scenarios", "first-look", "corrected.json").toString();

  @TempDir private Path folder = Path.of("");

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @Test
  void aCorrectionIsBetterAndSaysByHowMuch() {
    assertThat(run("compare", DRAWN, CORRECTED)).isZero();
    assertThat(out.toString())
        .contains("0 worse, 8 better, 41 the same")
        .containsPattern("WET → ◐ CAUGHT +Return line comes apart at its lowest point +−37 L");
  }

  @Test
  void theWayBackIsWorse() {
    assertThat(run("compare", CORRECTED, DRAWN, "--json")).isEqualTo(1);
    JsonNode root = JsonMapper.shared().readTree(out.toString());
    assertThat(root.get("worse")).hasSize(8);
    assertThat(root.get("worse"))
        .filteredOn(change -> !change.get("now").equals(change.get("before")))
        .hasSize(4)
        .allMatch(change -> change.get("now").asString().equals("WET"));
    assertThat(root.get("better")).isEmpty();
    assertThat(root.get("worse").get(0).get("moreWaterOnFloors_L").asDouble()).isPositive();
  }

  @Test
  void theSameIsAPageAndSheetsWithTheFingerprintsOfBoth() throws IOException {
    assertThat(run("compare", DRAWN, CORRECTED, "--to", folder.toString())).isZero();

    String page = Files.readString(folder.resolve("corrected.compared.html"));
    assertThat(page)
        .contains("0 worse, 8 better, 41 the same", "WET → ◐ CAUGHT", "Least freeboard")
        .contains(Fingerprint.of(Path.of(DRAWN)), Fingerprint.of(Path.of(CORRECTED)))
        .doesNotContain("<script");
    try (PDDocument sheets = Loader.loadPDF(folder.resolve("corrected.compared.pdf").toFile())) {
      assertThat(new PDFTextStripper().getText(sheets)).contains("compared with", "CAUGHT");
    }
  }

  @Test
  void whatNoRuleAndNoJugShowsIsTheSame() throws IOException {
    // 0.1 mm on the sump's 0.84 m² are 84 mL, which a burst sump and an open drain bring to floors.
    String drawn = Files.readString(Path.of(DRAWN));
    assertThat(drawn).contains("\"262 mm\"", "\"250 mm\"");
    Path higher =
        Files.writeString(
            folder.resolve("higher.json"),
            drawn.replace("\"262 mm\"", "\"262.1 mm\"").replace("\"250 mm\"", "\"250.1 mm\""));
    assertThat(run("compare", DRAWN, higher.toString())).isZero();
    assertThat(out.toString()).contains("0 worse, 0 better, 49 the same");
  }

  @Test
  void everyWrongDrawingIsTold() {
    assertThat(run("compare", "nowhere.json", "nowhere-else.json")).isEqualTo(2);
    assertThat(err.toString()).contains("nowhere.json", "nowhere-else.json");
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
