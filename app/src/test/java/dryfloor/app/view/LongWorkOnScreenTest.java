package dryfloor.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Answers that take long: how far they are, and a way out. */
class LongWorkOnScreenTest {

  @TempDir private Path folder = Path.of("");

  @Test
  void aLargeDrawingShowsHowFarItIsAndCanBeStopped() throws IOException {
    Path file = folder.resolve("hall.json");
    Files.copy(Path.of("..", "scenarios", "grand-hall", "as-drawn.json"), file);
    try (FileScreen screen = FileScreen.started(folder.resolve("settings"), Optional.of(file))) {
      Scene scene = screen.window().stage().getScene();
      screen.waitUntil(
          "it shows how far it is",
          window -> scene.lookup("#long-work").isVisible() && window.work().progress().get() > 0);
      ListView<?> failures = ListView.class.cast(scene.lookup("#failures"));
      Label state = Label.class.cast(scene.lookup("#list-state"));
      screen.waitUntil(
          "what is known so far is listed", window -> state.getText().contains("still to come"));
      HeadlessScreen.onScreen(
          () -> {
            failures.getSelectionModel().select(1);
            return failures;
          });
      Label verdict = Label.class.cast(scene.lookup("#verdict"));
      assertThat(HeadlessScreen.onScreen(verdict::getText)).isNotEmpty();
      screen.click(scene, "long-work-stop");

      FileScreen.waitFor(scene, "long-work-again");
      screen.waitUntil("it has stopped", window -> window.work().progress().get() >= 1);
      DrawingWindow window = screen.window();
      assertThat(HeadlessScreen.onScreen(() -> window.work().answers().get()))
          .matches(answers -> !answers.isWhole());
    }
  }
}
