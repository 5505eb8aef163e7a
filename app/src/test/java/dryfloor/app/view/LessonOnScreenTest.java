package dryfloor.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
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

  private static String text(Scene scene, String id) {
    return HeadlessScreen.onScreen(
        () -> scene.lookup("#" + id) instanceof Label label ? label.getText() : "");
  }
}
