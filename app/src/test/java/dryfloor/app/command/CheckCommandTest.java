package dryfloor.app.command;

import static dryfloor.app.command.Desk.answered;
import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.app.report.Ink;
import dryfloor.app.sample.SampleOutcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class CheckCommandTest {

  private static final FailureResult WET =
      answered(new Failure.SiphonBreakBlocked("return-break"), SampleOutcome.wet());
  private static final FailureResult CAUGHT =
      answered(new Failure.PumpStops("return-pump"), SampleOutcome.caught());
  private static final FailureResult DRY =
      answered(new Failure.BuildingLosesPower(), SampleOutcome.dry());
  private static final FailureResult OPEN =
      new FailureResult.Unanswered(new Failure.NobodyComesBack(), "it took too long");
  private static final FailureResult SKIPPED =
      new FailureResult.Skipped(new Failure.WallFails("display"), "laminated glass");

  @TempDir private Path folder = Path.of("");

  @Test
  void dryAndCaughtFloorsEndWithZero() throws IOException {
    Desk desk = new Desk().answers(DRY, CAUGHT);
    assertThat(desk.run("check", drawing())).isZero();
  }

  @Test
  void oneWetFloorEndsWithOne() throws IOException {
    assertThat(new Desk().answers(DRY, WET).run("check", drawing())).isEqualTo(1);
  }

  @Test
  void noAnswerIsNeverDry() throws IOException {
    Desk desk = new Desk().answers(DRY, OPEN);
    assertThat(desk.run("check", drawing())).isEqualTo(3);
    assertThat(desk.out())
        .contains("no answer for 1", "it took too long", "Treat these as wet until");
  }

  @Test
  void theWorstStandsFirst() throws IOException {
    Desk desk = new Desk().answers(DRY, CAUGHT, WET, SKIPPED);
    desk.run("check", drawing());
    assertThat(desk.out())
        .contains("4 failures: 1 wet, 1 caught, 1 dry, 1 skipped.")
        .containsSubsequence("▲ WET", "34 L on plant room floor", "◐ CAUGHT", "● DRY")
        .contains("When all is well the sump comes closest to its rim: 12 mm left.")
        .containsPattern(
            "● DRY +Power lost in the whole building +all in its vessels +as normal\\n")
        .contains("laminated glass")
        .contains("The drawing shows the sump at 260 mm; running, it settles at 273 mm.");
  }

  @Test
  void hiddenFailuresAreNamed() throws IOException {
    Desk desk = new Desk().answers(WET);
    desk.run("check", drawing());
    assertThat(desk.out()).containsSubsequence("Hidden:", "Siphon break blocked");
  }

  @Test
  void usReadersGetGallonsAndInches() throws IOException {
    Desk desk = new Desk().answers(WET);
    desk.run("check", drawing(), "--units", "us");
    assertThat(desk.out()).contains("9.0 gal on plant room floor").doesNotContain(" L ");
  }

  @Test
  void withoutColourThereIsNoEscape() throws IOException {
    Desk desk = new Desk().answers(WET, CAUGHT, DRY, OPEN);
    desk.run("check", drawing());
    assertThat(desk.out()).doesNotContain("\u001b");
  }

  @Test
  void colourNeverReplacesSignAndWord() throws IOException {
    Desk desk = new Desk().in(new Ink(true, true)).answers(WET, CAUGHT, DRY, OPEN);
    desk.run("check", drawing());
    assertThat(desk.out())
        .contains("\u001b[1;31m▲ WET\u001b[0m", "◐ CAUGHT", "● DRY", "? NO ANSWER");
  }

  @Test
  void fewCharactersAreEnough() throws IOException {
    Desk desk = new Desk().in(new Ink(false, false)).answers(WET, CAUGHT, DRY);
    desk.run("check", drawing());
    assertThat(desk.out()).contains("! WET", "~ CAUGHT", "o DRY");
    assertThat(desk.out().chars()).allMatch(character -> character < 128);
  }

  @Test
  void severalDrawingsGetASectionEachAndASummary() throws IOException {
    DrawingFiles.sound(folder, "a.json");
    DrawingFiles.wrong(folder, "b.json");
    Desk desk = new Desk().answers(DRY);
    assertThat(desk.run("check", folder.toString())).isEqualTo(2);
    assertThat(desk.out()).contains("All drawings", "a.json", "b.json: the drawing is wrong");
    assertThat(desk.err()).contains("b.json:");
  }

  @Test
  void aFolderIsSearchedToItsDepthAndSchemasAreNoDrawings() throws IOException {
    Path inner = Files.createDirectories(folder.resolve("cellar"));
    DrawingFiles.sound(inner, "a.json");
    DrawingFiles.sound(folder, "b.json");
    Files.writeString(folder.resolve("installation.schema.json"), "{}");
    Desk desk = new Desk().answers(DRY);
    assertThat(desk.run("check", folder.toString())).isZero();
    assertThat(desk.out()).contains("a.json", "b.json").doesNotContain("schema");
  }

  @Test
  void whatToTakeCareOfIsSaidOnceForSeveralDrawings() throws IOException {
    DrawingFiles.sound(folder, "a.json");
    DrawingFiles.sound(folder, "b.json");
    Desk desk = new Desk().answers(DRY);
    assertThat(desk.run("check", folder.toString())).isZero();
    assertThat(desk.out())
        .containsOnlyOnce("Take care")
        .containsOnlyOnce("Electricity:")
        .containsOnlyOnce("This is an engineering estimate")
        .containsSubsequence("All drawings", "a.json", "b.json", "Take care");
  }

  @Test
  void theTimeAwayIsPassedOn() throws IOException {
    Desk desk = new Desk();
    desk.run("check", drawing(), "--away", "14d");
    assertThat(desk.awayAsked()).isEqualTo(14 * 86400.0);
  }

  @Test
  void aDrawingThatSpillsWhenAllIsWellIsWrong() throws IOException {
    Desk desk = new Desk().spillsWhenAllIsWell();
    assertThat(desk.run("check", drawing())).isEqualTo(2);
    assertThat(desk.err())
        .contains("vessels[0]: normal operation is not sound: the display spills; lower it")
        .containsPattern("\\.json:[0-9]+:[0-9]+: vessels")
        .contains("The sump stands at its rim and begins to spill into the sump tray: 116 L");
  }

  @Test
  void jsonTellsTheSame() throws IOException {
    Desk desk = new Desk().answers(DRY, WET, OPEN);
    assertThat(desk.run("check", drawing(), "--json")).isEqualTo(3);
    JsonNode root = JsonMapper.shared().readTree(desk.out());
    JsonNode drawing = root.path("drawings").path(0);
    assertThat(root.path("dryfloorAnswer").asInt()).isEqualTo(1);
    assertThat(drawing.path("totals").path("wet").asInt()).isEqualTo(1);
    JsonNode wet = drawing.path("failures").path(1);
    assertThat(wet.path("id").asString()).isEqualTo("siphon-break-blocked.return-break");
    assertThat(wet.path("hidden").asBoolean()).isTrue();
    assertThat(wet.path("outcome").path("reachedFloors_L").asDouble()).isEqualTo(34);
    assertThat(wet.path("outcome").path("floors").path(0).path("depth_mm").asDouble()).isEqualTo(3);
  }

  @Test
  void jsonTellsWhatIsWrongToo() throws IOException {
    Desk desk = new Desk();
    Path wrong = DrawingFiles.wrong(folder, "wrong.json");
    assertThat(desk.run("check", wrong.toString(), "--json")).isEqualTo(2);
    JsonNode problem =
        JsonMapper.shared().readTree(desk.out()).path("drawings").path(0).path("problems").path(0);
    assertThat(problem.path("line").asInt()).isGreaterThan(1);
    assertThat(problem.path("path").asString()).isEqualTo("vessels[3].level");
  }

  @Test
  void anErrorInTheProgramIsNoAnswerAndNoTrace() throws IOException {
    Desk desk = new Desk().breaksDown();
    assertThat(desk.run("check", drawing())).isEqualTo(3);
    assertThat(desk.err()).contains("the bend is bent").doesNotContain("\tat ");
  }

  @Test
  void tooLittleMemoryIsNoAnswerAndSaysWhatHelps() throws IOException {
    for (String command : new String[] {"check", "tell", "draw"}) {
      Desk desk = new Desk().runsOutOfMemory();
      String line = command.equals("check") ? "check FILE" : command + " FILE normal";
      assertThat(desk.run(line.replace("FILE", drawing()).split(" ", -1))).isEqualTo(3);
      assertThat(desk.err())
          .contains(
              "needs more memory than the program may take", "DRYFLOOR_MEMORY=2g", "--threads 1")
          .doesNotContain("\tat ");
    }
  }

  @Test
  void aDrawingTooLargeForTheMemoryDoesNotTakeTheOthersWithIt() throws IOException {
    Path wrong = Files.writeString(folder.resolve("a-wrong.json"), "{");
    String large = drawing();
    Desk desk = new Desk().runsOutOfMemory();

    assertThat(desk.run("check", large, wrong.toString())).isEqualTo(2);
    assertThat(desk.err())
        .contains(large + ":\ndryfloor: no answer: this needs more memory", "a-wrong.json");
    assertThat(desk.out()).contains("no answer, too large", "the drawing is wrong");

    Desk values = new Desk().runsOutOfMemory();
    assertThat(values.run("check", large, "--json")).isEqualTo(3);
    assertThat(JsonMapper.shared().readTree(values.out()).at("/drawings/0/noAnswer").asString())
        .contains("needs more memory");
  }

  @Test
  void aTraceIsShownToThoseWhoAsk() throws IOException {
    Desk desk = new Desk().breaksDown().with(Map.of("DRYFLOOR_TRACE", "1"));
    desk.run("check", drawing());
    assertThat(desk.err()).contains("\tat dryfloor.");
  }

  private String drawing() throws IOException {
    return DrawingFiles.sound(folder, "shop.json").toString();
  }
}
