package dryfloor.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.app.paper.Fingerprint;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.Scene;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.Spinner;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Papers are made in the window, and what was measured on them comes back to it. */
class PapersOnScreenTest {

  @TempDir private Path folder = Path.of("");

  private Path file = Path.of("");

  @BeforeEach
  void aDrawingInAFile() throws IOException {
    file = folder.resolve("shop.json");
    Files.copy(Path.of("..", "scenarios", "first-look", "corrected.json"), file);
  }

  @Test
  void allPapersAreWrittenWithTheFingerprintOfTheFile() throws IOException {
    Path papers = Files.createDirectory(folder.resolve("papers"));
    try (FileScreen screen = FileScreen.started(folder.resolve("settings"), Optional.of(file))) {
      screen.answering(papers);
      Keys.press(KeyCode.CONTROL, KeyCode.P);
      screen.waitForNotice("papers", "Written to");

      try (Stream<Path> written = Files.list(papers)) {
        assertThat(written.map(path -> path.getFileName().toString()))
            .contains(
                "shop.report.html",
                "shop.report.pdf",
                "shop.marks.pdf",
                "shop.worksheet.xlsx",
                "shop.rehearsal.csv",
                "shop.report.json");
      }
      assertThat(Files.readString(papers.resolve("shop.report.html")))
          .contains(Fingerprint.of(file));
    }
  }

  @Test
  void mendsOfTheWorstFailureStandOnThePapersWhenTheyAreAskedFor() throws IOException {
    Files.copy(
        Path.of("..", "scenarios", "first-look", "as-drawn.json"),
        file,
        StandardCopyOption.REPLACE_EXISTING);
    Path papers = Files.createDirectory(folder.resolve("papers"));
    try (FileScreen screen = FileScreen.started(folder.resolve("settings"), Optional.of(file))) {
      Scene scene = screen.window().stage().getScene();
      Keys.press(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.P);
      FileScreen.waitFor(scene, "papers-choice-begin");
      Screenshots.take(scene, "papers-choice");
      Keys.press(KeyCode.DOWN);
      Keys.press(KeyCode.DOWN);
      screen.answering(papers);
      screen.click(scene, "papers-choice-begin");
      screen.waitForNotice("papers", "Written to");

      assertThat(Files.readString(papers.resolve("shop.worksheet.csv")))
          .containsOnlyOnce("Worked out here");
    }
  }

  @Test
  void sheetsAndScaleOfSeverityAreChosen() throws IOException {
    Path papers = Files.createDirectory(folder.resolve("papers"));
    try (FileScreen screen = FileScreen.started(folder.resolve("settings"), Optional.of(file))) {
      Scene scene = screen.window().stage().getScene();
      Keys.press(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.P);
      FileScreen.waitFor(scene, "papers-choice-begin");
      fill(scene, "papers-choice-some", "3.7 L");
      fill(scene, "papers-choice-much", "1 L");
      screen.click(scene, "papers-choice-begin");
      HeadlessScreen.waitUntil(
          "the scale is refused",
          () ->
              scene.lookup("#papers-choice-problem") instanceof Label label
                  && label.getText().contains("above the first"));
      fill(scene, "papers-choice-much", "7.3 L");
      HeadlessScreen.onScreen(
          () -> {
            Spinner.class.cast(scene.lookup("#papers-choice-count")).decrement(3);
            ComboBox.class
                .cast(scene.lookup("#papers-choice-size"))
                .getSelectionModel()
                .selectLast();
            return scene;
          });
      screen.answering(papers);
      screen.click(scene, "papers-choice-begin");
      screen.waitForNotice("papers", "Written to");
    }

    assertThat(Files.readString(papers.resolve("shop.report.html"))).contains("3.7 L", "7.3 L");
    try (PDDocument sheets = Loader.loadPDF(papers.resolve("shop.report.pdf").toFile())) {
      assertThat(sheets.getPage(0).getMediaBox().getWidth()).isEqualTo(8.5f * 72);
    }
  }

  private static void fill(Scene scene, String id, String text) {
    HeadlessScreen.onScreen(
        () -> {
          TextField.class.cast(scene.lookup("#" + id)).setText(text);
          return scene;
        });
  }

  @Test
  void papersOfWhatIsNotSavedAreNotMade() {
    try (FileScreen screen = FileScreen.started(folder.resolve("settings"), Optional.of(file))) {
      screen.rename("Another shop");
      Keys.press(KeyCode.CONTROL, KeyCode.P);
      screen.waitForNotice("papers", "save the drawing first");
    }
  }

  @Test
  void aMeasuredLevelIsHeldAgainstTheExpectedOneAndKept() throws IOException {
    try (FileScreen screen = FileScreen.started(folder.resolve("settings"), Optional.of(file))) {
      Scene scene = screen.window().stage().getScene();
      Keys.press(KeyCode.CONTROL, KeyCode.M);
      FileScreen.waitFor(scene, "measured-compare");
      screen.click(scene, "measured-sump");
      Keys.press(KeyCode.DIGIT9);
      screen.click(scene, "measured-compare");

      HeadlessScreen.waitUntil("it is compared", () -> said(scene).contains("DIFFERS"));
      assertThat(answer(scene)).contains("Sump: 9 mm below the rim, expected");
      Screenshots.take(scene, "measured");

      screen.answering(folder);
      screen.click(scene, "measured-keep");
      screen.waitForNotice("papers", "Written to");
      try (Stream<Path> kept = Files.list(folder)) {
        assertThat(kept.map(Path::toString)).anyMatch(name -> name.contains("shop.rehearsal.2"));
      }
    }
  }

  @Test
  void whatIsNoDepthIsMarked() {
    try (FileScreen screen = FileScreen.started(folder.resolve("settings"), Optional.of(file))) {
      Scene scene = screen.window().stage().getScene();
      Keys.press(KeyCode.CONTROL, KeyCode.M);
      FileScreen.waitFor(scene, "measured-compare");
      screen.click(scene, "measured-sump");
      Keys.press(KeyCode.X);
      screen.click(scene, "measured-compare");

      HeadlessScreen.waitUntil("it says so", () -> said(scene).contains("no depth below the rim"));
    }
  }

  private static String answer(Scene scene) {
    return HeadlessScreen.onScreen(() -> said(scene));
  }

  private static String said(Scene scene) {
    return scene.lookup("#measured-answer") instanceof TextArea area ? area.getText() : "";
  }
}
