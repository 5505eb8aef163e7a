package dryfloor.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuItem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every key of the menus does one thing. */
class KeysAreUniqueTest {

  @TempDir private Path folder = Path.of("");

  @Test
  void noTwoEntriesShareTheirKeys() {
    try (FileScreen screen = FileScreen.started(folder.resolve("settings"), Optional.empty())) {
      DrawingWindow window = screen.window();
      List<String> keys =
          HeadlessScreen.onScreen(
              () ->
                  window.main().menuBar().getMenus().stream()
                      .flatMap(KeysAreUniqueTest::entries)
                      .flatMap(item -> Optional.ofNullable(item.getAccelerator()).stream())
                      .map(Object::toString)
                      .toList());

      assertThat(keys).hasSizeGreaterThan(20).doesNotHaveDuplicates();
    }
  }

  private static Stream<MenuItem> entries(MenuItem item) {
    return item instanceof Menu menu
        ? menu.getItems().stream().flatMap(KeysAreUniqueTest::entries)
        : Stream.of(item);
  }
}
