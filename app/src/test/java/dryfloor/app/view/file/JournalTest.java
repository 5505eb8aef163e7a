package dryfloor.app.view.file;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.model.Installation;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Unsaved changes outlive the program. */
class JournalTest {

  private static final long ONE_SECOND = 1_000;

  @TempDir private Path folder = Path.of("");

  private final Installation first = SampleDrawings.named("First");
  private final Installation second = SampleDrawings.named("Second");

  @Test
  void aChangeIsOnTheDiskWithinASecond() throws IOException, InterruptedException {
    Journal journal = new Journals(folder).begin();
    try (JournalKeeper keeper = new JournalKeeper(journal, JournalTest::fail)) {
      keeper.changed(DrawingFile.untitled(first), first);
      keeper.changed(DrawingFile.untitled(first), second);
      Thread.sleep(ONE_SECOND);

      assertThat(journal.read().flatMap(Unsaved::drawing))
          .map(Installation::name)
          .contains("Second");
    }
  }

  @Test
  void hourlongDraggingIsKeptWhileItLasts() throws IOException, InterruptedException {
    Journal journal = new Journals(folder).begin();
    try (JournalKeeper keeper = new JournalKeeper(journal, JournalTest::fail)) {
      long end = System.currentTimeMillis() + ONE_SECOND;
      while (System.currentTimeMillis() < end) {
        keeper.changed(DrawingFile.untitled(first), second);
        Thread.sleep(20);
      }

      assertThat(journal.read()).isPresent();
    }
  }

  @Test
  void whatIsSavedIsInNoJournal() throws IOException {
    Journal journal = new Journals(folder).begin();
    JournalKeeper keeper = new JournalKeeper(journal, JournalTest::fail);
    keeper.changed(DrawingFile.untitled(first), second);
    keeper.saved();
    keeper.close();

    try (Stream<Path> left = Files.list(folder)) {
      assertThat(left).isEmpty();
    }
  }

  @Test
  void theJournalOfAProgramThatLivesIsNotOffered() throws IOException {
    Journal journal = new Journals(folder).begin();
    journal.write(new Unsaved(Optional.empty(), Stamp.MISSING, "half a drawing"));

    assertThat(new Journals(folder).leftBehind()).isEmpty();

    journal.close();
    List<Journal> left = new Journals(folder).leftBehind();
    assertThat(left).hasSize(1);
    assertThat(left.getFirst().read()).map(Unsaved::text).contains("half a drawing");
  }

  @Test
  void theFileThatItBelongsToIsFoundAgainWhateverItIsCalled() throws IOException {
    Path path = folder.resolve("a\nb %41 ü.json");
    Unsaved unsaved = new Unsaved(Optional.of(path), new Stamp("abc"), "{\n}\n");
    try (Journal journal = new Journals(folder).begin()) {
      journal.write(unsaved);

      assertThat(journal.read()).contains(unsaved);
    }
  }

  private static void fail(Exception failure) {
    throw new AssertionError(failure);
  }
}
