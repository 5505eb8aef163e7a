package dryfloor.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** An answer that nobody gets is no answer. */
class LostOutputTest {

  private static final String FULL = "No space left on device";

  @TempDir private Path folder = Path.of("");

  @ParameterizedTest
  @ValueSource(
      strings = {
        "check FILE",
        "check FILE --json",
        "tell FILE normal",
        "tell FILE normal --json",
        "draw FILE -o -",
        "list FILE",
        "validate FILE",
        "new --list",
        "completion",
        "--help",
        "check --help"
      })
  void anAnswerThatCannotBeWrittenIsNoAnswer(String line) throws IOException {
    Desk desk = new Desk().withOutput(new FullDisk(FULL), false);
    assertThat(ask(desk, line)).isEqualTo(3);
    assertThat(desk.err()).contains("the answer could not be written in full: " + FULL);
  }

  @Test
  void aWrongDrawingStaysWrongWhenTheOutputIsLost() throws IOException {
    Desk desk = new Desk().withOutput(new FullDisk(FULL), false);
    Path wrong = DrawingFiles.wrong(folder, "wrong.json");
    assertThat(desk.run("check", wrong.toString(), "--json")).isEqualTo(2);
    assertThat(desk.err()).contains("wrong.json:", "could not be written");
  }

  @Test
  void aReaderWhoHasSeenEnoughIsNoMishap() throws IOException {
    Desk broken = new Desk().withOutput(new FullDisk("Broken pipe"), false);
    assertThat(ask(broken, "check FILE")).isZero();
    assertThat(broken.err()).isEmpty();
    Desk piped = new Desk().withOutput(new FullDisk("Relais brisé"), true);
    assertThat(ask(piped, "check FILE")).isZero();
    assertThat(piped.err()).isEmpty();
  }

  private int ask(Desk desk, String line) throws IOException {
    String file = DrawingFiles.sound(folder, "shop.json").toString();
    return desk.run(line.replace("FILE", file).split(" ", -1));
  }
}
