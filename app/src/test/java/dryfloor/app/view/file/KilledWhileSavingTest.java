package dryfloor.app.view.file;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.model.Installation;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A program that is killed in the middle of saving leaves the old or the new file, whole. */
class KilledWhileSavingTest {

  private static final int KILLS = 8;
  private static final int LONGEST_LIFE = 60;

  @TempDir private Path folder = Path.of("");

  @Test
  void theOldOrTheNewFileIsAlwaysWhole() throws IOException, InterruptedException {
    Path file = folder.resolve("a.json");
    Random chance = new Random(25);
    for (int kill = 0; kill < KILLS; kill++) {
      Process program = saver(file);
      // It says one letter as soon as it saves for the first time.
      assertThat(program.getInputStream().read()).isEqualTo('s');
      Thread.sleep(chance.nextInt(LONGEST_LIFE));
      program.destroyForcibly().waitFor();

      assertThat(Opening.of(file)).isInstanceOf(Opening.Opened.class);
      assertThat(journalText()).allMatch(unsaved -> unsaved.drawing().isPresent());
    }
  }

  /** What was left behind, each as whole as the file. */
  private List<Unsaved> journalText() throws IOException {
    List<Journal> left = new Journals(folder.resolve("journal")).leftBehind();
    assertThat(left).as("journals of the killed program").isNotEmpty();
    List<Unsaved> all = new ArrayList<>();
    for (Journal journal : left) {
      all.add(journal.read().orElseThrow());
      journal.close();
    }
    return all;
  }

  private Process saver(Path file) throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1",
            "-Xshare:auto",
            "-cp",
            System.getProperty("java.class.path"),
            Saver.class.getName(),
            file.toString())
        .redirectError(ProcessBuilder.Redirect.INHERIT)
        .start();
  }

  /** A program that does nothing but save and keep a journal, until it is killed. */
  static final class Saver {

    private Saver() {}

    public static void main(String[] arguments) throws IOException {
      Path file = Path.of(arguments[0]);
      Installation one = SampleDrawings.named("One");
      Installation other = SampleDrawings.named("Other".repeat(40));
      Journal journal = new Journals(file.resolveSibling("journal")).begin();
      save(one, file);
      keep(journal, file);
      System.out.print('s');
      System.out.flush();
      while (Files.exists(file)) {
        save(other, file);
        keep(journal, file);
        save(one, file);
      }
    }

    private static void keep(Journal journal, Path file) throws IOException {
      journal.write(new Unsaved(Optional.of(file), Stamp.of(file), Files.readString(file)));
    }

    private static void save(Installation drawing, Path file) {
      Saving saving = DrawingFile.untitled(drawing).saveAs(drawing, file);
      if (!(saving instanceof Saving.Saved)) {
        throw new IllegalStateException(saving.toString());
      }
    }
  }
}
