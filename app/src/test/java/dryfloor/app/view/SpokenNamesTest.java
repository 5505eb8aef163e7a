package dryfloor.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.app.view.work.Work;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.AccessibleAttribute;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.control.TabPane;
import javafx.scene.control.TitledPane;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever can take the keys has a name that a screen reader can say. */
class SpokenNamesTest {

  /** So many are drawn. */
  private static final int ELEMENTS = 30;

  @TempDir private Path folder = Path.of("");
  private Path file = Path.of("");

  @BeforeEach
  void aDrawing() throws IOException {
    file = folder.resolve("shop.json");
    Files.writeString(
        file,
        Files.readString(Path.of("..", "scenarios", "first-look", "as-drawn.json"))
            .replace("\"circuits\": [", "\"circuits\": [ { \"id\": \"spare\" },"));
  }

  @Test
  void inTheWindowWithEveryTabAndEveryKindOfElement() {
    try (FileScreen screen = started()) {
      screen.waitForAnswers();
      Scene scene = screen.window().stage().getScene();
      Work work = screen.window().work();
      HeadlessScreen.onScreen(
          () -> {
            work.choose(Optional.of("power-lost.building"));
            parts(scene.getRoot())
                .filter(TitledPane.class::isInstance)
                .map(TitledPane.class::cast)
                .forEach(pane -> pane.setExpanded(true));
            return work;
          });
      assertThat(nameless(scene)).isEmpty();
      eachTab(scene);
      Node picture = HeadlessScreen.onScreen(() -> scene.lookup("#picture"));
      for (int element = 0; element < ELEMENTS; element++) {
        HeadlessScreen.onScreen(
            () -> {
              picture.requestFocus();
              return picture;
            });
        Keys.press(KeyCode.RIGHT);
        HeadlessScreen.onScreen(
            () -> {
              SideTabs.class.cast(scene.lookup("#side-tabs")).showDrawing();
              return picture;
            });
        assertThat(nameless(scene)).as("element %d", element).isEmpty();
      }
    }
  }

  @Test
  void inTheFormsThatTakeThePlaceOfTheDrawing() throws IOException {
    try (FileScreen screen = started()) {
      screen.waitForAnswers();
      Scene scene = screen.window().stage().getScene();
      Keys.press(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.P);
      FileScreen.waitFor(scene, "papers-choice-begin");
      assertThat(nameless(scene)).isEmpty();
      Keys.press(KeyCode.ESCAPE);
      FileScreen.waitFor(scene, "failures");

      Keys.press(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.L);
      FileScreen.waitFor(scene, "lesson-question");
      assertThat(nameless(scene)).isEmpty();
      Keys.press(KeyCode.ESCAPE);
      FileScreen.waitFor(scene, "failures");

      Keys.press(KeyCode.CONTROL, KeyCode.M);
      FileScreen.waitFor(scene, "measured-compare");
      assertThat(nameless(scene)).isEmpty();
    }
    Path faulty = folder.resolve("faulty.json");
    Files.writeString(faulty, Files.readString(file).replaceFirst("\"657 mm\"", "\"757 mm\""));
    try (FileScreen screen = started().answering(faulty)) {
      Scene scene = screen.window().stage().getScene();
      Keys.press(KeyCode.CONTROL, KeyCode.O);
      FileScreen.waitFor(scene, "notice-file-refused-1");
      assertThat(nameless(scene)).isEmpty();
      screen.choose("file-refused", 1);
      FileScreen.waitFor(scene, "mending-text");
      assertThat(nameless(scene)).isEmpty();
    }
  }

  private FileScreen started() {
    return FileScreen.started(folder.resolve("settings"), Optional.of(file));
  }

  private static void eachTab(Scene scene) {
    List<TabPane> panes =
        HeadlessScreen.onScreen(
            () ->
                parts(scene.getRoot())
                    .filter(TabPane.class::isInstance)
                    .map(TabPane.class::cast)
                    .toList());
    for (TabPane pane : panes) {
      for (int tab = 0; tab < pane.getTabs().size(); tab++) {
        int shown = tab;
        HeadlessScreen.onScreen(
            () -> {
              pane.getSelectionModel().select(shown);
              return pane;
            });
        assertThat(nameless(scene)).isEmpty();
      }
    }
  }

  /** What can take the keys and has no name. */
  private static List<String> nameless(Scene scene) {
    return HeadlessScreen.onScreen(
        () -> {
          scene.getRoot().applyCss();
          scene.getRoot().layout();
          List<String> found = new ArrayList<>();
          parts(scene.getRoot())
              .filter(node -> node.isFocusTraversable() && node.isVisible() && !isNamed(node))
              .forEach(node -> found.add(node.getClass().getSimpleName() + " " + node));
          return found;
        });
  }

  private static boolean isNamed(Node node) {
    return Stream.of(
                Optional.ofNullable(node.getAccessibleText()),
                node instanceof Labeled labeled
                    ? Optional.ofNullable(labeled.getText())
                    : Optional.<String>empty())
            .flatMap(Optional::stream)
            .anyMatch(name -> !name.isBlank())
        || node.queryAccessibleAttribute(AccessibleAttribute.LABELED_BY) != null;
  }

  private static Stream<Node> parts(Node node) {
    return node instanceof Parent parent && node.isVisible()
        ? Stream.concat(
            Stream.of(node),
            parent.getChildrenUnmodifiable().stream().flatMap(SpokenNamesTest::parts))
        : Stream.of(node);
  }
}
