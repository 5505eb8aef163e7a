package dryfloor.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BadInputTest {

  @TempDir private Path folder = Path.of("");

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "``                    | the file is empty",
        "{                     | ends too early",
        "[]                    | a list",
        "{\"dryfloor\": 99}    | 99",
        "{\"dryfloor\": 1,}    | not valid JSON",
        "not json              | not valid JSON"
      })
  void aWrongFileIsToldWithItsPlace(String content, String complaint) throws IOException {
    Path file = Files.writeString(folder.resolve("bad.json"), content);
    for (String command : new String[] {"check", "validate"}) {
      Desk desk = new Desk();
      assertThat(desk.run(command, file.toString())).isEqualTo(2);
      assertThat(desk.err()).contains("bad.json:1:", complaint).doesNotContain("\tat ");
    }
  }

  @Test
  void aWrongQuantityIsToldByLineColumnAndPath() throws IOException {
    Desk desk = new Desk();
    Path file = DrawingFiles.wrong(folder, "shop.json");
    assertThat(desk.run("tell", file.toString(), "normal")).isEqualTo(2);
    assertThat(desk.err()).containsPattern("shop\\.json:\\d+:\\d+: vessels\\[3\\]\\.level: ");
  }

  @Test
  void aMissingFileIsToldSimply() {
    Desk desk = new Desk();
    assertThat(desk.run("check", folder.resolve("none.json").toString())).isEqualTo(2);
    assertThat(desk.err()).contains("there is no such file");
  }

  @Test
  void anEmptyFolderIsToldSimply() {
    Desk desk = new Desk();
    assertThat(desk.run("check", folder.toString())).isEqualTo(2);
    assertThat(desk.err()).contains("no .json file is in this folder");
  }

  @Test
  void aFolderIsNoFile() {
    Desk desk = new Desk();
    assertThat(desk.run("tell", folder.toString(), "normal")).isEqualTo(2);
    assertThat(desk.err()).contains("this is a folder");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "check",
        "tell",
        "list",
        "tell x.json",
        "draw",
        "validate",
        "nonsense",
        "check x.json --units parsecs",
        "check x.json --away soon",
        "check x.json --away -3h",
        "check x.json --threads many",
        "check x.json --threads 0",
        "check x.json --no-such-option",
        "new no-such-template"
      })
  void aWrongQuestionEndsWithTwoAndHelps(String line) {
    Desk desk = new Desk();
    assertThat(desk.run(line.split(" ", -1))).isEqualTo(2);
    assertThat(desk.err()).startsWith("dryfloor: ").doesNotContain("\tat ");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "check", "tell", "list", "draw", "validate", "new", "completion"})
  void helpIsThereForEverything(String command) {
    Desk desk = new Desk();
    assertThat(desk.run((command + " --help").strip().split(" ", -1))).isZero();
    assertThat(desk.out()).contains("Usage: dryfloor", "Example");
  }
}
