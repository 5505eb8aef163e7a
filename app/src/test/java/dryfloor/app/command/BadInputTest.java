package dryfloor.app.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import dryfloor.analysis.failure.FailureNames;
import dryfloor.app.sample.SampleInstallation;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine.Command;

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

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "check FILE extra --json | there is no such file",
        "tell FILE normal extra  | 'extra' is one word too many",
        "frob                    | there is no command 'frob'",
        "list FILE --json        | there is no option '--json' here",
        "draw FILE -o FOLDER     | it is a folder; name a file in it",
        "draw FILE -o ''         | its name is empty",
        "new -o ''               | its name is empty",
        "check ''                | the name of the file is empty",
        "tell '' normal          | the name of the file is empty",
        "tell FILE xyzzyx        | no failure is called 'xyzzyx'; 'dryfloor list FILE' lists",
        "check /dev/null         | /dev/null is no ordinary file"
      })
  void whatIsOddInTheQuestionIsSaidInPlainWords(String line, String complaint) throws IOException {
    String file = DrawingFiles.sound(folder, "shop.json").toString();
    String[] words =
        Arrays.stream(line.split(" ", -1))
            .map(word -> word.equals("FILE") ? file : word)
            .map(word -> word.equals("FOLDER") ? folder.toString() : word)
            .map(word -> word.equals("''") ? "" : word)
            .toArray(String[]::new);
    Desk desk = new Desk();
    assertThat(desk.run(words)).isEqualTo(2);
    assertThat(desk.err()).contains(complaint);
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

  @Test
  void theUnitsToChooseFromAreToldAsTheyAreTyped() throws IOException {
    String file = DrawingFiles.sound(folder, "shop.json").toString();
    Desk desk = new Desk();
    assertThat(desk.run("check", file, "--units", "furlong")).isEqualTo(2);
    assertThat(desk.err()).contains("'furlong' are no units to answer in; it can be metric or us");
    assertThat(new Desk().run("check", file, "--units", "US")).isZero();
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "-1", "65", "many", "1.5", "99999999999"})
  void theNumberOfThreadsIsSensible(String count) throws IOException {
    String file = DrawingFiles.sound(folder, "shop.json").toString();
    Desk desk = new Desk();
    assertThat(desk.run("check", file, "--threads", count)).isEqualTo(2);
    assertThat(desk.err()).contains("'" + count + "' is no whole number from 1 to 64");
  }

  @ParameterizedTest
  @ValueSource(strings = {"check", "list"})
  void aDrawingInWhichNothingCanFailLeavesNothingToJudge(String command) throws IOException {
    Path file = Files.writeString(folder.resolve("dry.json"), DrawingFiles.ONE_DRY_TRAY);
    Desk desk = new Desk();
    assertThat(desk.run(command, file.toString())).isEqualTo(2);
    assertThat(desk.out()).isEmpty();
    assertThat(desk.err()).contains("there is nothing to judge: nothing in this drawing can fail");
  }

  @Test
  void aDrawingThatSwitchesEveryFailureOffLeavesNothingToJudge() throws IOException {
    Desk asked = new Desk();
    String skipped =
        asked.failures(SampleInstallation.get()).stream()
            .map(FailureNames::id)
            .map(id -> "{ \"failure\": \"" + id + "\", \"reason\": \"trust\" }")
            .collect(Collectors.joining(",", "\"failures\": { \"skipped\": [", "] }, \"name\""));
    Path file =
        Files.writeString(
            folder.resolve("trusting.json"),
            SampleInstallation.text().replaceFirst("\"name\"", skipped));
    Desk desk = new Desk();
    assertThat(desk.run("check", file.toString())).isEqualTo(2);
    assertThat(desk.err()).contains("the drawing switches off every failure");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "check",
        "tell",
        "pairs",
        "sets",
        "limits",
        "away",
        "bands",
        "warnings",
        "list",
        "draw",
        "report",
        "compare",
        "rehearse",
        "view",
        "validate",
        "new",
        "completion"
      })
  void helpIsThereForEverythingAndFitsAScreen(String command) {
    Desk desk = new Desk();
    assertThat(desk.run((command + " --help").strip().split(" ", -1))).isZero();
    assertThat(desk.out()).contains("Usage: dryfloor", "Example").doesNotContain("%%");
    assertThat(desk.out().lines()).allMatch(line -> line.length() <= 80);
  }

  /**
   * Each line of help is a format; a percent sign alone would be complained about on the screen.
   */
  @Test
  void noLineOfHelpIsAFaultyFormat() {
    Stream.of(LimitsCommand.class, PairsCommand.class, BandsCommand.class, AwayCommand.class)
        .flatMap(command -> Arrays.stream(command.getAnnotation(Command.class).footer()))
        .forEach(
            line -> assertThatCode(() -> String.format(line)).as(line).doesNotThrowAnyException());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "tell --help | dryfloor tell shop.json power-lost.building",
        "draw --help | normal operation, to shop.normal.svg",
        "--help      | dryfloor draw shop.json power-lost.building  a picture, before and after"
      })
  void examplesNameOneFailureAndStandOnOneLine(String line, String example) {
    Desk desk = new Desk();
    assertThat(desk.run(line.split(" ", -1))).isZero();
    assertThat(desk.out()).contains(example).doesNotContain("json power ");
  }
}
