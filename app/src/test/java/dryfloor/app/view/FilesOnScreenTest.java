package dryfloor.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.app.view.file.Opening;
import dryfloor.app.view.panel.Notices;
import dryfloor.app.view.panel.ProblemWords;
import dryfloor.model.file.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Opening, saving and closing with real keys and clicks. */
class FilesOnScreenTest {

  @TempDir private Path folder = Path.of("");
  private Path settings = Path.of("");
  private Path file = Path.of("");

  @BeforeEach
  void aFile() throws IOException {
    settings = folder.resolve("settings");
    file = folder.resolve("shop.json");
    Files.copy(Path.of("..", "scenarios", "first-look", "as-drawn.json"), file);
  }

  @Test
  void aWarningOfAFileThatWasOpenedLeadsToItsPlace() throws IOException {
    Path shop = folder.resolve("shop.json");
    Files.writeString(
        shop,
        Files.readString(Path.of("..", "scenarios", "first-look", "as-drawn.json"))
            .replace("\"circuits\": [", "\"circuits\": [ { \"id\": \"spare\" },"));
    try (FileScreen screen = FileScreen.started(folder.resolve("settings"), Optional.of(shop))) {
      Scene scene = screen.window().stage().getScene();
      FileScreen.waitFor(scene, "notice-file-warnings-list");
      screen.click(scene, "notice-file-warnings-list");

      HeadlessScreen.waitUntil(
          "the spare circuit is chosen",
          () ->
              scene.lookup("#sheet-heading") instanceof Label heading
                  && heading.getText().toLowerCase(Locale.ROOT).contains("spare"));
      assertThat(FileScreen.has(scene, "notice-file-warnings")).isTrue();
    }
  }

  @Test
  void atTheFirstStartAnExampleIsAnsweredAlready() {
    try (FileScreen screen = FileScreen.started(settings, Optional.empty())) {
      screen.waitForAnswers();

      assertThat(screen.title()).contains("not saved yet").doesNotContain("unsaved changes");
    }
  }

  @Test
  void whatWasOpenLastIsOpenedNextTime() {
    FileScreen.started(settings, Optional.of(file)).close();

    try (FileScreen screen = FileScreen.started(settings, Optional.empty())) {
      assertThat(screen.title()).contains("shop.json");
    }
  }

  @Test
  void whereTheLastFileIsGoneAnExampleIsShownAndItIsSaid() throws IOException {
    FileScreen.started(settings, Optional.of(file)).close();
    Files.delete(file);

    try (FileScreen screen = FileScreen.started(settings, Optional.empty())) {
      assertThat(screen.notice("file-gone")).contains("shop.json");
      assertThat(screen.title()).contains("not saved yet");
    }
  }

  @Test
  void aChangeIsSavedWithTheKeysAndUndoneBackToUnsaved() {
    try (FileScreen screen = FileScreen.started(settings, Optional.of(file))) {
      screen.rename("Another shop");
      assertThat(screen.title()).startsWith("\u2022 Another shop");

      Keys.press(KeyCode.CONTROL, KeyCode.S);
      screen.waitForTitle(title -> !title.contains("unsaved changes"));
      assertThat(name(file)).isEqualTo("Another shop");

      Keys.press(KeyCode.CONTROL, KeyCode.Z);
      screen.waitForTitle(title -> title.startsWith("\u2022"));
      Keys.press(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.Z);
      screen.waitForTitle(title -> !title.contains("unsaved changes"));
    }
  }

  @Test
  void anExampleIsSavedUnderANameOfOnesOwn() {
    Path other = folder.resolve("mine.json");
    try (FileScreen screen = FileScreen.started(settings, Optional.empty()).answering(other)) {
      Keys.press(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.S);

      screen.waitForTitle(title -> title.contains("mine.json"));
      assertThat(screen.offeredName()).endsWith(".json");
      assertThat(Opening.of(other)).isInstanceOf(Opening.Opened.class);
    }
  }

  @Test
  void aBrokenFileIsListedBesideTheDrawingThatWasThere() throws IOException {
    Path broken = folder.resolve("broken.json");
    Files.writeString(broken, Files.readString(file).replace("\"dryfloor\": 1", "\"dryfloor\": 9"));
    try (FileScreen screen = FileScreen.started(settings, Optional.of(file)).answering(broken)) {
      Keys.press(KeyCode.CONTROL, KeyCode.O);

      screen.waitForNotice("file-refused", "broken.json can't be opened");
      Notices notices = screen.window().notices();
      ListView<?> list =
          (ListView<?>) HeadlessScreen.onScreen(() -> notices.lookup("#notice-file-refused-list"));
      assertThat(ProblemWords.of((Problem) list.getItems().getFirst()))
          .contains("Line 3")
          .contains("newer Dryfloor");
      assertThat(screen.title()).contains("shop.json");
      screen.waitForAnswers();
      Screenshots.take(screen.window().stage().getScene(), "files-broken");
    }
  }

  @Test
  void filesDraggedInOpenHereAndInWindowsOfTheirOwn() throws IOException {
    Path second = Files.copy(file, folder.resolve("second.json"));
    try (FileScreen screen = FileScreen.started(settings, Optional.empty())) {
      DrawingWindow window = screen.window();
      HeadlessScreen.onScreen(
          () -> {
            window.desk().receive(List.of(file, second));
            return file;
          });

      screen.waitForWindows(2);
      assertThat(screen.title()).contains("shop.json");
      assertThat(screen.windows().getLast().file().path()).contains(second);
    }
  }

  @Test
  void aFileThatIsOpenIsNotOpenedTwice() {
    try (FileScreen screen = FileScreen.started(settings, Optional.of(file)).answering(file)) {
      Keys.press(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.O);
      Keys.press(KeyCode.CONTROL, KeyCode.N);

      screen.waitForWindows(2);
      assertThat(screen.windows().getLast().file().path()).isEmpty();
    }
  }

  @Test
  void whatOthersHaveWrittenIsNotSavedOverUnasked() throws IOException {
    try (FileScreen screen = FileScreen.started(settings, Optional.of(file))) {
      screen.rename("Mine");
      Files.writeString(file, Files.readString(file).replace("\"away\"", " \"away\""));
      String theirs = Files.readString(file);

      Keys.press(KeyCode.CONTROL, KeyCode.S);
      screen.waitForNotice("saving", "changed by somebody else");
      assertThat(Files.readString(file)).isEqualTo(theirs);
      Screenshots.take(screen.window().stage().getScene(), "files-changed");

      screen.choose("saving", 2);
      screen.waitForTitle(title -> !title.contains("unsaved changes"));
      assertThat(name(file)).isEqualTo("Mine");
      assertThat(Files.readString(folder.resolve("shop.json.bak"))).isEqualTo(theirs);
    }
  }

  @Test
  void closingAsksAboveTheDrawingAndLosesNothing() {
    try (FileScreen screen = FileScreen.started(settings, Optional.of(file))) {
      screen.rename("Mine");

      Keys.press(KeyCode.CONTROL, KeyCode.W);
      screen.waitForNotice("closing", "Mine has unsaved changes");
      screen.choose("closing", 1);

      screen.waitForWindows(0);
      assertThat(name(file)).isEqualTo("Mine");
    }
  }

  private static String name(Path path) {
    return Opening.of(path) instanceof Opening.Opened opened ? opened.drawing().name() : "";
  }
}
