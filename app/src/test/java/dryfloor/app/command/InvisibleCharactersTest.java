package dryfloor.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.app.sample.SampleInstallation;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Nothing that comes from a file or from the command line steers the reader's terminal. */
class InvisibleCharactersTest {

  @TempDir private Path folder = Path.of("");

  @ParameterizedTest
  @ValueSource(strings = {"check FILE", "tell FILE normal", "list FILE", "draw FILE -o -"})
  void aMarkThatTurnsTextAroundIsShown(String line) throws IOException {
    Desk desk = new Desk();
    assertThat(ask(desk, line, "Shop\u202e\u2066")).isZero();
    assertThat(desk.out()).doesNotContain("\u202e", "\u2066");
    assertThat(desk.out().replace("&lt;", "<").replace("&gt;", ">")).contains("<U+202E><U+2066>");
  }

  @ParameterizedTest
  @ValueSource(strings = {"check FILE", "tell FILE normal", "list FILE", "validate FILE"})
  void anEscapeSequenceInANameIsRefused(String line) throws IOException {
    Desk desk = new Desk();
    assertThat(ask(desk, line, "\\u001b[2JShop")).isEqualTo(2);
    assertThat(desk.err()).contains("U+001B at character 1").doesNotContain("\u001b");
  }

  @Test
  void anEscapeSequenceOnTheCommandLineIsSpelledOut() throws IOException {
    for (String line :
        new String[] {
          "check \u001b[2J.json",
          "check FILE --\u001b[2J",
          "check FILE --units \u001b[2J",
          "tell FILE \u001b[2J",
          "draw FILE -o none/\u001b[2J.svg",
          "new \u001b[2J",
          "\u001b[2J"
        }) {
      Desk desk = new Desk();
      assertThat(ask(desk, line, "Shop")).isEqualTo(2);
      assertThat(desk.err()).contains("<U+001B>").doesNotContain("\u001b");
    }
  }

  private int ask(Desk desk, String line, String name) throws IOException {
    String usual = "Display upstairs, filter sump in the cellar";
    assertThat(SampleInstallation.text()).contains(usual);
    String named = SampleInstallation.text().replace(usual, name);
    Path file = Files.writeString(folder.resolve("shop.json"), named);
    return desk.run(line.replace("FILE", file.toString()).split(" ", -1));
  }
}
