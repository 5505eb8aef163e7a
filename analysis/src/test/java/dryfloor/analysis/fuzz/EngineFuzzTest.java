package dryfloor.analysis.fuzz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import dryfloor.analysis.installation.Shipped;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import org.opentest4j.AssertionFailedError;

/**
 * However extreme its numbers, a drawing is answered with something that can be, or honestly not
 * answered; the engine never fails and never goes on without end.
 */
class EngineFuzzTest {

  /** How many inputs the reader gets, where the usual ones are too few: here a part of them. */
  private static final String INPUTS = "dryfloor.fuzz";

  private static final int INPUTS_FOR_A_DRAWING = 200;
  private static final long SEED = Long.getLong("dryfloor.fuzz.seed", 1);

  private static final int USUAL_DRAWINGS = 50;
  private static final int USUAL_STEPS = 3_000;
  private static final int MANY_STEPS = 20_000;

  /** Drawings up to this size are answered fast enough for every build (characters of text). */
  private static final int SMALL = 9_000;

  private static final Duration A_DRAWING_HANGS = Duration.ofMinutes(10);

  @Test
  void smallDrawingsWithExtremeNumbersAreAnswered(@TempDir Path folder) throws IOException {
    List<String> small = files().stream().filter(file -> file.length() < SMALL).toList();
    EngineFuzz fuzz = new EngineFuzz(SEED, small, USUAL_STEPS, folder);
    fuzz.run(USUAL_DRAWINGS);
    assertThat(fuzz.faults()).as(fuzz.toString()).isEmpty();
    assertThat(fuzz.answers()).as(fuzz.toString()).isGreaterThan(3 * USUAL_DRAWINGS);
  }

  /** Leaves drawings that show something, and {@code summary.txt}, in {@code target/fuzz}. */
  @Test
  @EnabledIfSystemProperty(named = INPUTS, matches = ".+")
  void allDrawingsWithExtremeNumbersAreAnsweredInTime() throws IOException {
    Path folder = Path.of("target", "fuzz");
    EngineFuzz fuzz = new EngineFuzz(SEED, files(), MANY_STEPS, folder);
    for (long left = Long.getLong(INPUTS, 0); left > 0; left -= INPUTS_FOR_A_DRAWING) {
      try {
        assertTimeoutPreemptively(A_DRAWING_HANGS, () -> fuzz.run(1));
      } catch (AssertionFailedError hangs) {
        fuzz.keep("hangs");
        throw hangs;
      }
      Files.writeString(folder.resolve("summary.txt"), fuzz + "\n");
    }
    assertThat(fuzz.faults()).as(fuzz.toString()).isEmpty();
  }

  private static List<String> files() {
    return Shipped.files().stream().map(EngineFuzzTest::text).toList();
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
