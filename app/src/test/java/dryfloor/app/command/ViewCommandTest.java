package dryfloor.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code view} opens what can be drawn and nothing else. */
class ViewCommandTest {

  @TempDir private Path folder = Path.of("");

  @Test
  void aSoundDrawingIsOpened() {
    Desk desk = new Desk();
    Path file = Path.of("..", "scenarios", "first-look", "as-drawn.json");

    assertThat(desk.run("view", file.toString())).isEqualTo(ExitCode.FLOOR_DRY.number());
    assertThat(desk.opened()).containsExactly(Optional.of(file));
  }

  @Test
  void withoutAFileWhatWasOpenLastIsOpened() {
    Desk desk = new Desk();

    assertThat(desk.run("view")).isEqualTo(ExitCode.FLOOR_DRY.number());
    assertThat(desk.opened()).containsExactly(Optional.empty());
  }

  @Test
  void aMissingFileIsToldAndOpensNoWindow() {
    Desk desk = new Desk();

    assertThat(desk.run("view", folder.resolve("none.json").toString()))
        .isEqualTo(ExitCode.BAD_INPUT.number());
    assertThat(desk.opened()).isEmpty();
  }
}
