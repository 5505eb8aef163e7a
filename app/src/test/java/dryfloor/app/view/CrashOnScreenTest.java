package dryfloor.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.app.view.file.Journal;
import dryfloor.app.view.file.Journals;
import dryfloor.app.view.file.Opening;
import dryfloor.app.view.file.Stamp;
import dryfloor.app.view.file.Unsaved;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a program that died left behind is offered at the next start. */
class CrashOnScreenTest {

  @TempDir private Path folder = Path.of("");

  @Test
  void unsavedChangesAreOpenedAgainAndSavedToTheirFile() throws IOException {
    Path settings = folder.resolve("settings");
    Path file = folder.resolve("shop.json");
    Files.copy(Path.of("..", "scenarios", "first-look", "as-drawn.json"), file);
    leaveBehind(settings, file);

    try (FileScreen screen = FileScreen.started(settings, Optional.empty())) {
      screen.waitForNotice("left-behind-0", "ended before changes were saved");
      Screenshots.take(screen.window().stage().getScene(), "files-left-behind");
      screen.choose("left-behind-0", 1);
      screen.waitForWindows(2);
      DrawingWindow recovered = screen.windows().getLast();
      assertThat(HeadlessScreen.onScreen(() -> recovered.stage().getTitle()))
          .startsWith("\u2022 Left behind");

      Keys.press(KeyCode.CONTROL, KeyCode.S);
      HeadlessScreen.waitUntil("it is saved", () -> !recovered.hasUnsaved());
      assertThat(Opening.of(file))
          .isInstanceOfSatisfying(
              Opening.Opened.class,
              opened -> assertThat(opened.drawing().name()).isEqualTo("Left behind"));
    }
    assertThat(new Journals(settings.resolve("journal")).leftBehind()).isEmpty();
  }

  /** A journal that nobody holds any more. */
  private static void leaveBehind(Path settings, Path file) throws IOException {
    String text = Files.readString(file);
    String changed = text.replaceFirst("\"name\": \"[^\"]*\"", "\"name\": \"Left behind\"");
    try (Journal journal = new Journals(settings.resolve("journal")).begin()) {
      journal.write(new Unsaved(Optional.of(file), Stamp.of(file), changed));
    }
  }
}
