package dryfloor.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.app.view.file.Journals;
import dryfloor.app.view.file.Opening;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.TextArea;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file with mistakes is mended in the window, with real clicks and keys. */
class MendingOnScreenTest {

  private static final String LIST = "mending-problems";

  @TempDir private Path folder = Path.of("");
  private Path settings = Path.of("");
  private Path sound = Path.of("");
  private Path faulty = Path.of("");

  /** The display stands 57 mm over its rim of 700 mm, and a bore is a volume. */
  @BeforeEach
  void aFaultyFile() throws IOException {
    settings = folder.resolve("settings");
    sound = folder.resolve("sound.json");
    faulty = folder.resolve("faulty.json");
    Files.copy(Path.of("..", "scenarios", "first-look", "as-drawn.json"), sound);
    Files.writeString(
        faulty,
        Files.readString(sound)
            .replaceFirst("\"657 mm\"", "\"757 mm\"")
            .replaceFirst("\"44 mm\"", "\"44 L\""));
  }

  @Test
  void bothMistakesAreMendedAtTheirPlacesAndTheDrawingIsOpenedAndSaved() throws IOException {
    try (FileScreen screen = FileScreen.started(settings, Optional.of(sound)).answering(faulty)) {
      String before = Files.readString(faulty);
      Scene scene = mend(screen);
      waitForProblems(scene, 2);
      assertThat(selected(scene)).isEqualTo("\"757 mm\"");
      assertThat(words(scene, "mending-place")).startsWith("Line 23, column");
      assertThat(canBeOpened(scene)).isFalse();
      Screenshots.take(scene, "mending-two");

      paste("\"657 mm\"");
      waitForProblems(scene, 1);
      assertThat(canBeOpened(scene)).isFalse();
      Keys.press(KeyCode.F8);
      assertThat(selected(scene)).isEqualTo("\"44 L\"");
      paste("\"44 mm\"");
      waitForProblems(scene, 0);
      Screenshots.take(scene, "mending-sound");
      screen.click(scene, "mending-open");

      screen.waitForTitle(title -> title.contains("faulty.json, unsaved changes"));
      assertThat(Files.readString(faulty)).isEqualTo(before);
      Keys.press(KeyCode.CONTROL, KeyCode.S);
      screen.waitForTitle(title -> !title.contains("unsaved changes"));
      assertThat(Opening.of(faulty)).isInstanceOf(Opening.Opened.class);
      assertThat(Files.readString(folder.resolve("faulty.json.bak"))).isEqualTo(before);
    }
  }

  @Test
  void aDrawingWithUnsavedChangesStaysAndWhatWasMendedOpensBesideIt() {
    try (FileScreen screen = FileScreen.started(settings, Optional.of(sound)).answering(faulty)) {
      screen.rename("Not saved yet");
      Scene scene = mend(screen);
      paste("\"657 mm\"");
      waitForProblems(scene, 1);
      Keys.press(KeyCode.F8);
      paste("\"44 mm\"");
      waitForProblems(scene, 0);
      screen.click(scene, "mending-open");

      screen.waitForWindows(2);
      assertThat(screen.title()).contains("Not saved yet");
      assertThat(screen.windows().getLast().file().path()).contains(faulty);
    }
  }

  @Test
  void aTextThatIsHalfMendedIsNotLeftUnasked() throws IOException {
    try (FileScreen screen = FileScreen.started(settings, Optional.of(sound)).answering(faulty)) {
      String before = Files.readString(faulty);
      Scene scene = mend(screen);
      paste("\"657 mm\"");
      waitForProblems(scene, 1);
      Keys.press(KeyCode.ESCAPE);
      FileScreen.waitFor(scene, "notice-mending-leaving");
      screen.click(scene, "notice-mending-leaving-1");

      FileScreen.waitFor(scene, "failures");
      assertThat(Files.readString(faulty)).isEqualTo(before.replace("\"757 mm\"", "\"657 mm\""));
      assertThat(Files.readString(folder.resolve("faulty.json.bak"))).isEqualTo(before);
    }
  }

  @Test
  void linesThatEndAsOnWindowsStillDoWhenTheTextIsSaved() throws IOException {
    String before = Files.readString(faulty).replace("\n", "\r\n");
    Files.writeString(faulty, before);
    try (FileScreen screen = FileScreen.started(settings, Optional.of(sound)).answering(faulty)) {
      Scene scene = mend(screen);
      paste("\"657 mm\"");
      waitForProblems(scene, 1);
      Keys.press(KeyCode.CONTROL, KeyCode.S);

      FileScreen.waitFor(scene, "notice-mending");
      assertThat(Files.readString(faulty)).isEqualTo(before.replace("\"757 mm\"", "\"657 mm\""));
    }
  }

  @Test
  void closingTheWindowAsksForTheTextAsWell() throws IOException {
    try (FileScreen screen = FileScreen.started(settings, Optional.of(sound)).answering(faulty)) {
      String before = Files.readString(faulty);
      Scene scene = mend(screen);
      paste("\"657 mm\"");
      waitForProblems(scene, 1);
      DrawingWindow window = screen.window();
      HeadlessScreen.onScreen(
          () -> {
            window.saves().close();
            return window;
          });
      FileScreen.waitFor(scene, "notice-mending-leaving");
      screen.click(scene, "notice-mending-leaving-2");

      screen.waitForWindows(0);
      assertThat(Files.readString(faulty)).isEqualTo(before);
    }
  }

  @Test
  void whatOthersHaveWrittenMeanwhileIsNotWrittenOver() throws IOException {
    try (FileScreen screen = FileScreen.started(settings, Optional.of(sound)).answering(faulty)) {
      Scene scene = mend(screen);
      paste("\"657 mm\"");
      Files.writeString(faulty, "theirs");
      Keys.press(KeyCode.CONTROL, KeyCode.S);

      FileScreen.waitFor(scene, "notice-mending");
      assertThat(words(scene, "notice-mending-text")).contains("changed by somebody else");
      assertThat(Files.readString(faulty)).isEqualTo("theirs");
    }
  }

  @Test
  void whatWasTypedIsInTheJournalAndGoneOnWithAtTheNextStart() throws IOException {
    Path left = folder.resolve("left");
    try (FileScreen screen = FileScreen.started(settings, Optional.of(sound)).answering(faulty)) {
      Scene scene = mend(screen);
      paste("\"658 mm\"");
      waitForProblems(scene, 1);
      HeadlessScreen.waitUntil("it is in a journal", () -> isInAJournal("658 mm"));
      Files.createDirectories(left.resolve("journal"));
      copyJournals(settings.resolve("journal"), left.resolve("journal"));
    }

    try (FileScreen screen = FileScreen.started(left, Optional.of(sound))) {
      screen.waitForNotice("left-behind-0", "they can't be read");
      screen.choose("left-behind-0", 1);
      Scene scene = screen.window().stage().getScene();
      waitForProblems(scene, 1);
      TextArea text = TextArea.class.cast(scene.lookup("#mending-text"));
      String shown = HeadlessScreen.onScreen(() -> text.getText());
      assertThat(shown).contains("658 mm");
    }
    assertThat(new Journals(left.resolve("journal")).leftBehind()).isEmpty();
  }

  /** Opens the faulty file and clicks its first problem. */
  private static Scene mend(FileScreen screen) {
    Keys.press(KeyCode.CONTROL, KeyCode.O);
    screen.waitForNotice("file-refused", "faulty.json can't be opened");
    Scene scene = screen.window().stage().getScene();
    screen.click(scene, "notice-file-refused-list");
    FileScreen.waitFor(scene, LIST);
    return scene;
  }

  private static void waitForProblems(Scene scene, int number) {
    HeadlessScreen.waitUntil(
        "problems: " + number,
        () ->
            scene.lookup("#" + LIST) instanceof ListView<?> list
                && list.getItems().size() == number
                && scene.lookup("#mending-state") instanceof Label state
                && !state.getText().equals(Words.of("mending.reading")));
  }

  private static String selected(Scene scene) {
    TextArea text = TextArea.class.cast(scene.lookup("#mending-text"));
    return HeadlessScreen.onScreen(text::getSelectedText);
  }

  private static boolean canBeOpened(Scene scene) {
    Button open = Button.class.cast(scene.lookup("#mending-open"));
    return HeadlessScreen.onScreen(() -> !open.isDisabled());
  }

  private static String words(Scene scene, String id) {
    Label label = Label.class.cast(scene.lookup("#" + id));
    return HeadlessScreen.onScreen(label::getText);
  }

  private static void paste(String text) {
    HeadlessScreen.onScreen(
        () -> {
          ClipboardContent content = new ClipboardContent();
          content.putString(text);
          return Clipboard.getSystemClipboard().setContent(content);
        });
    Keys.press(KeyCode.CONTROL, KeyCode.V);
  }

  private boolean isInAJournal(String text) {
    try (var files = Files.list(settings.resolve("journal"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".journal")).toList()) {
        if (Files.readString(file).contains(text)) {
          return true;
        }
      }
      return false;
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private static void copyJournals(Path from, Path to) throws IOException {
    try (var files = Files.list(from)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".journal")).toList()) {
        Files.copy(file, to.resolve(file.getFileName()));
      }
    }
  }
}
