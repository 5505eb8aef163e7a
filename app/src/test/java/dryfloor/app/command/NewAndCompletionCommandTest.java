package dryfloor.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.app.shipped.Template;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class NewAndCompletionCommandTest {

  @TempDir private Path folder = Path.of("");

  @ParameterizedTest
  @EnumSource
  void everyTemplateIsASoundDrawing(Template template) {
    String file = folder.resolve("new.json").toString();
    assertThat(new Desk().run("new", template.id(), "-o", file)).isZero();
    Desk desk = new Desk();
    assertThat(desk.run("validate", file)).as(desk.err()).isZero();
    assertThat(desk.out()).contains("sound, ").doesNotContain("please look");
  }

  @Test
  void whatIsThereIsNotWrittenOver() throws IOException {
    Path file = Files.writeString(folder.resolve("mine.json"), "mine");
    Desk desk = new Desk();
    assertThat(desk.run("new", "-o", file.toString())).isEqualTo(2);
    assertThat(desk.err()).contains("already there");
    assertThat(Files.readString(file)).isEqualTo("mine");
  }

  @Test
  void forceWritesOver() throws IOException {
    Path file = Files.writeString(folder.resolve("mine.json"), "mine");
    assertThat(new Desk().run("new", "--force", "-o", file.toString())).isZero();
    assertThat(Files.readString(file)).startsWith("{");
  }

  @Test
  void aMissingFolderIsToldSimply() {
    Desk desk = new Desk();
    String file = folder.resolve("none").resolve("new.json").toString();
    assertThat(desk.run("new", "-o", file)).isEqualTo(2);
    assertThat(desk.err()).contains("its folder does not exist");
  }

  @Test
  void templatesAreListed() {
    Desk desk = new Desk();
    assertThat(desk.run("new", "--list")).isZero();
    assertThat(desk.out()).contains("cellar-sump");
  }

  @Test
  void shellsLearnTheCommands() {
    Desk desk = new Desk();
    assertThat(desk.run("completion")).isZero();
    assertThat(desk.out()).contains("complete -F", "validate", "--away");
  }
}
