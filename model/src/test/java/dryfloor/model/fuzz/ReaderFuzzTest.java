package dryfloor.model.fuzz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import org.opentest4j.AssertionFailedError;

/**
 * Whatever is in a file, the reader answers with a drawing that it writes and reads again, or with
 * problems that have a place in the file; it never fails and never takes memory without bounds.
 */
class ReaderFuzzTest {

  /** How many inputs, where the usual ones are too few. */
  private static final String INPUTS = "dryfloor.fuzz";

  private static final long SEED = Long.getLong("dryfloor.fuzz.seed", 1);
  private static final int USUAL_INPUTS = 10_000;
  private static final int BATCH = 1000;

  /** Some hundred times what a batch takes. */
  private static final Duration BATCH_HANGS = Duration.ofMinutes(2);

  @Test
  void tenThousandBrokenFilesAreAnswered(@TempDir Path folder) throws IOException {
    ReaderFuzz fuzz = new ReaderFuzz(SEED, folder);
    fuzz.run(USUAL_INPUTS);
    assertThat(fuzz.faults()).as(fuzz.toString()).isEmpty();
  }

  /** Leaves inputs that are not answered, and {@code summary.txt}, in {@code target/fuzz}. */
  @Test
  @EnabledIfSystemProperty(named = INPUTS, matches = ".+")
  void asManyBrokenFilesAsWantedAreAnsweredInTime() throws IOException {
    Path folder = Path.of("target", "fuzz");
    ReaderFuzz fuzz = new ReaderFuzz(SEED, folder);
    for (long left = Long.getLong(INPUTS, USUAL_INPUTS); left > 0; left -= BATCH) {
      long batch = Math.min(left, BATCH);
      try {
        assertTimeoutPreemptively(BATCH_HANGS, () -> fuzz.run(batch));
      } catch (AssertionFailedError hangs) {
        fuzz.keep("hangs");
        throw hangs;
      }
      Files.writeString(folder.resolve("summary.txt"), fuzz + "\n");
    }
    assertThat(fuzz.faults()).as(fuzz.toString()).isEmpty();
  }
}
