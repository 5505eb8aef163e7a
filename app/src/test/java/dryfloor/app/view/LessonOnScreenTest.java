package dryfloor.app.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.app.drawing.BuildingPicture;
import dryfloor.app.drawing.Plan;
import dryfloor.app.drawing.Point;
import dryfloor.app.report.DraftScene;
import dryfloor.app.report.Wording;
import dryfloor.app.view.picture.PictureView;
import dryfloor.model.Installation;
import dryfloor.model.unit.Units;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.robot.Robot;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Somebody learns: guesses first, sees afterwards. */
class LessonOnScreenTest {

  @TempDir private Path folder = Path.of("");

  @Test
  void theOutcomeIsHiddenUntilItIsGuessed() throws IOException {
    Path file = folder.resolve("shop.json");
    Files.copy(Path.of("..", "scenarios", "first-look", "as-drawn.json"), file);
    try (FileScreen screen = FileScreen.started(folder.resolve("settings"), Optional.of(file))) {
      Scene scene = screen.window().stage().getScene();
      Keys.press(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.L);
      FileScreen.waitFor(scene, "lesson-question");

      assertThat(FileScreen.has(scene, "verdict")).isFalse();
      assertThat(FileScreen.has(scene, "failures")).isFalse();
      screen.click(scene, "guess-typed-sump");
      Keys.press(KeyCode.CONTROL, KeyCode.A);
      Keys.press(KeyCode.DIGIT3);
      Keys.press(KeyCode.DIGIT0);
      Keys.press(KeyCode.DIGIT0);
      Keys.press(KeyCode.TAB);
      screen.click(scene, "guess-DRY");
      Screenshots.take(scene, "lesson-guess");
      screen.click(scene, "guess-show");

      FileScreen.waitFor(scene, "marking-points");
      assertThat(FileScreen.has(scene, "verdict")).isTrue();
      assertThat(text(scene, "marking-sump")).contains("off by");
      assertThat(text(scene, "lesson-score")).contains("of 100");
      Screenshots.take(scene, "lesson-shown");

      screen.click(scene, "marking-next");
      FileScreen.waitFor(scene, "guess-show");
      assertThat(FileScreen.has(scene, "verdict")).isFalse();
      Keys.press(KeyCode.ESCAPE);
      FileScreen.waitFor(scene, "failures");
    }
  }

  @Test
  void whatWasEarnedIsRememberedAtTheNextStartUntilItIsForgotten() throws IOException {
    Path file = folder.resolve("shop.json");
    Path settings = folder.resolve("settings");
    Files.copy(Path.of("..", "scenarios", "first-look", "as-drawn.json"), file);
    try (FileScreen screen = FileScreen.started(settings, Optional.of(file))) {
      Scene scene = learn(screen);
      assertThat(text(scene, "lesson-earlier")).isEqualTo("Not tried before.");
      screen.click(scene, "guess-DRY");
      screen.click(scene, "guess-show");
      FileScreen.waitFor(scene, "marking-points");
    }
    try (FileScreen screen = FileScreen.started(settings, Optional.of(file))) {
      Scene scene = learn(screen);
      assertThat(text(scene, "lesson-earlier")).contains("1 of 12 exercises answered");
      Keys.press(KeyCode.ESCAPE);
      FileScreen.waitFor(scene, "failures");

      choose(screen, "learn.scores");
      FileScreen.waitFor(scene, "scores-forget-0");
      assertThat(text(scene, "scores-set-0")).endsWith("shop.json");
      Screenshots.take(scene, "lesson-scores");
      screen.click(scene, "scores-forget-0");
      FileScreen.waitFor(scene, "scores-none");
    }
    try (FileScreen screen = FileScreen.started(settings, Optional.of(file))) {
      assertThat(text(learn(screen), "lesson-earlier")).isEqualTo("Not tried before.");
    }
  }

  @Test
  void theLessonIsAsDarkAsLargeAndInTheUnitsOfTheWindow() throws IOException {
    Path file = folder.resolve("shop.json");
    Files.copy(Path.of("..", "scenarios", "first-look", "as-drawn.json"), file);
    Files.createDirectories(folder.resolve("settings"));
    Files.writeString(
        folder.resolve("settings").resolve("settings.json"),
        "{\"appearance\":{\"dark\":true,\"units\":\"us\",\"letters\":20}}");
    try (FileScreen screen = FileScreen.started(folder.resolve("settings"), Optional.of(file))) {
      Scene scene = learn(screen);

      assertThat(HeadlessScreen.onScreen(() -> scene.getRoot().getStyle())).contains("20.0px");
      assertThat(text(scene, "guess-title-sump")).contains("now 10.3").endsWith(" in");
      Screenshots.take(scene, "lesson-dark-us");
    } finally {
      HeadlessScreen.onScreen(
          () -> {
            HeadlessScreen.LOOKS.rule();
            return folder;
          });
    }
  }

  /** Begins to guess the failures of the window's own drawing. */
  private static Scene learn(FileScreen screen) {
    Scene scene = screen.window().stage().getScene();
    Keys.press(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.L);
    FileScreen.waitFor(scene, "lesson-question");
    return scene;
  }

  /** Chooses what the menu for learning calls by this name. */
  private static void choose(FileScreen screen, String key) {
    DrawingWindow window = screen.window();
    HeadlessScreen.onScreen(
        () -> {
          window.main().menuBar().getMenus().stream()
              .flatMap(menu -> menu.getItems().stream())
              .filter(item -> Words.of(key).equals(item.getText()))
              .forEach(item -> item.fire());
          return key;
        });
  }

  @Test
  void anExpectedLevelIsDraggedInThePicture() throws IOException {
    Path file = folder.resolve("shop.json");
    Files.copy(Path.of("..", "scenarios", "first-look", "as-drawn.json"), file);
    try (FileScreen screen = FileScreen.started(folder.resolve("settings"), Optional.of(file))) {
      Scene scene = screen.window().stage().getScene();
      Keys.press(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.L);
      FileScreen.waitFor(scene, "guess-typed-sump");
      int before = typedSump(scene);

      dragUpInTheSump(scene, screen.window().drawing(), 0.1);

      assertThat(typedSump(scene)).isCloseTo(before + 100, within(3));
    }
  }

  private static int typedSump(Scene scene) {
    return HeadlessScreen.onScreen(
        () ->
            scene.lookup("#guess-typed-sump") instanceof TextField field
                ? Integer.parseInt(field.getText())
                : -1);
  }

  /** Presses in the middle of the sump and pulls upwards by so many metres of the building. */
  private static void dragUpInTheSump(Scene scene, Installation drawing, double by) {
    BuildingPicture building =
        BuildingPicture.of(
            Plan.of(drawing), DraftScene.of(Wording.of(drawing, Units.METRIC), "", ""));
    Point from = building.place("sump").orElseThrow();
    double metre = building.onPaper(new Point(0, 0)).y() - building.onPaper(new Point(0, 1)).y();
    HeadlessScreen.onScreen(
        () -> {
          HeadlessScreen.settle();
          PictureView picture = PictureView.class.cast(scene.lookup("#picture"));
          double x = picture.screenX(from.x());
          Robot robot = new Robot();
          robot.mouseMove(picture.localToScreen(x, picture.screenY(from.y())));
          robot.mousePress(MouseButton.PRIMARY);
          robot.mouseMove(picture.localToScreen(x, picture.screenY(from.y() - by * metre)));
          robot.mouseRelease(MouseButton.PRIMARY);
          return picture;
        });
  }

  private static String text(Scene scene, String id) {
    return HeadlessScreen.onScreen(
        () -> scene.lookup("#" + id) instanceof Label label ? label.getText() : "");
  }
}
