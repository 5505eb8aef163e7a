package dryfloor.model.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that are no installation files at all, or too much of one. */
class WrongTextTest {

  private static final String SOUND = SampleFiles.text(SampleFiles.DISPLAY_ABOVE_SUMP);

  @TempDir private Path folder;

  @Test
  void aTextThatIsNotJsonIsRefusedWhereItStopsBeingJson() {
    Problem problem = only("{\n  \"dryfloor\": 1,\n  name: \"x\" }");
    assertThat(problem.message()).isEqualTo("not valid JSON: the name name stands without quotes");
    assertThat(problem.remedy()).isEqualTo("write \"name\"");
    assertThat(problem.line() + ":" + problem.column()).isEqualTo("3:3");
  }

  @Test
  void aTruncatedFileIsSaidToEndTooEarly() {
    Problem problem = only(SOUND.substring(0, SOUND.length() / 2));
    assertThat(problem.message()).startsWith("not valid JSON: the file ends too early");
    assertThat(problem.remedy()).contains("close every {, [").contains("backup");
    assertThat(problem.line()).isGreaterThan(50);
  }

  @Test
  void anEmptyFileIsSaidToBeEmpty() {
    assertThat(only("").message()).isEqualTo("the file is empty");
    assertThat(only("  \n").remedy()).contains("\"dryfloor\": 1");
  }

  @Test
  void textAfterTheEndIsRefused() {
    assertThat(only(SOUND + "{}").message()).isEqualTo("there is text after the end");
  }

  @Test
  void aListAtTheRootIsRefused() {
    assertThat(only("[]").message()).isEqualTo("the file holds a list");
  }

  @Test
  void aNewerVersionAsksForANewerProgram() {
    Rejection.of("\"dryfloor\": 1", "\"dryfloor\": 7")
        .isOnly("dryfloor", "7,", "version 7, newer than", "versions up to 1");
  }

  @Test
  void aVersionThatIsNoNumberIsRefused() {
    Rejection.of("\"dryfloor\": 1", "\"dryfloor\": \"one\"")
        .isOnly("dryfloor", "\"one\"", "no version", "write \"dryfloor\": 1");
  }

  @Test
  void aFileWithoutVersionMayBeSomethingElse() {
    assertThat(only("{\"name\": \"x\"}").message()).contains("may not be an installation file");
  }

  @Test
  void aFileOfAHundredMegabytesIsRefusedBeforeItIsRead() throws IOException {
    Path file = folder.resolve("large.json");
    try (RandomAccessFile large = new RandomAccessFile(file.toFile(), "rw")) {
      large.setLength(100L * 1024 * 1024);
    }
    Problem problem = only(InstallationFile.read(file));
    assertThat(problem.message()).isEqualTo("the file has 100 MB");
    assertThat(problem.remedy()).contains("at most 16 MB");
  }

  @Test
  void tenThousandLevelsOfNestingAreRefused() {
    Problem problem = only("{\"dryfloor\": 1, \"name\": " + "[".repeat(10_000));
    assertThat(problem.message()).isEqualTo("more than 64 levels of nesting");
    assertThat(problem.remedy()).contains("brackets that are never closed");
    assertThat(problem.line()).isEqualTo(1);
  }

  @Test
  void aHundredThousandComponentsGetAClearAnswerWithinSeconds() {
    String junctions =
        IntStream.range(0, 100_000)
            .mapToObj(i -> "{\"id\": \"j" + i + "\", \"elevation\": \"1 m\"}")
            .collect(Collectors.joining(",\n"));
    Instant start = Instant.now();
    Problem problem = only("{\"dryfloor\": 1, \"junctions\": [" + junctions + "]}");
    assertThat(problem.message()).isEqualTo("the file draws 100000 components");
    assertThat(problem.remedy()).contains("at most 20000");
    assertThat(Duration.between(start, Instant.now())).isLessThan(Duration.ofSeconds(10));
  }

  @Test
  void aFileThatIsNotThereIsSaidToBeMissing() {
    assertThat(only(InstallationFile.read(folder.resolve("none.json"))).message())
        .contains("there is no file");
  }

  @Test
  void aFileThatIsNotUtf8IsRefusedAtTheFirstWrongByte() throws IOException {
    Path file = folder.resolve("latin.json");
    Files.write(
        file, "{\n \"name\": \"Gro\u00dfes Becken\"}".getBytes(StandardCharsets.ISO_8859_1));
    Problem problem = only(InstallationFile.read(file));
    assertThat(problem.message()).isEqualTo("the file is not UTF-8 text");
    assertThat(problem.remedy()).contains("save it as UTF-8");
    assertThat(problem.line() + ":" + problem.column()).isEqualTo("2:14");
  }

  @Test
  void aByteOrderMarkIsReadOver() throws IOException {
    Path file = folder.resolve("marked.json");
    Files.writeString(file, "\ufeff" + SOUND);
    assertThat(InstallationFile.read(file)).isInstanceOf(Reading.Read.class);
  }

  @Test
  void aNumberOfAThousandDigitsIsRefused() {
    Problem problem = only("{\"dryfloor\": " + "1".repeat(2000) + "}");
    assertThat(problem.message()).isEqualTo("a number of more than 1000 digits");
    assertThat(problem.line() + ":" + problem.column()).isEqualTo("1:14");
  }

  @Test
  void aTextOfTwentyThousandCharactersIsRefusedWhereItBegins() {
    Problem problem = only("{\n \"dryfloor\": 1,\n \"name\": \"" + "x".repeat(20_000) + "\"}");
    assertThat(problem.message()).isEqualTo("a text of more than 10000 characters");
    assertThat(problem.line() + ":" + problem.column()).isEqualTo("3:10");
  }

  @Test
  void aNameThatFillsAPageIsRefused() {
    Rejection.of("\"Overflow teeth\"", "\"" + "teeth ".repeat(50) + "\"")
        .isOnly("weirs[0].name", "\"teeth teeth", "a name of 300 characters", "at most 200");
  }

  private static Problem only(String text) {
    return only(InstallationFile.readText(text));
  }

  private static Problem only(Reading reading) {
    assertThat(reading).isInstanceOf(Reading.Rejected.class);
    assertThat(((Reading.Rejected) reading).problems()).hasSize(1);
    return ((Reading.Rejected) reading).problems().getFirst();
  }
}
