package dryfloor.analysis.sweep;

import static dryfloor.analysis.installation.WaterAssert.assertDrained;
import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureCatalogue;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.installation.Shipped;
import dryfloor.analysis.installation.Trial;
import dryfloor.analysis.outcome.Note;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.Verdict;
import dryfloor.model.Installation;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A main drain drips where it goes over the rim of its sump. With more water in the sump it may run
 * full there, with less pressure inside than outside: then nothing drips. It may run with air above
 * its water too, and nobody knows.
 */
class DoubtfulDripTest {

  private static final String DRIPS = "drips-at-lowest-point.main-drain";

  @TempDir private Path folder = Path.of("");

  @ParameterizedTest
  @ValueSource(ints = {262, 290, 300, 320, 385})
  void howMuchDripsHardlyHangsOnTheLevelBelow(int level) throws IOException {
    Installation house = withSumpAt(level);

    Outcome outcome = Trial.after(house, failure(house));

    assertThat(outcome.verdict()).isEqualTo(Verdict.CAUGHT);
    assertDrained(outcome, "gully").isWithin(5, 147);
  }

  @Test
  void theWorseIsToldAndThatItIsInDoubt() throws IOException {
    Installation house = withSumpAt(320);

    Outcome outcome = Trial.after(house, failure(house));

    assertThat(outcome.notes()).contains(new Note.DripInDoubt("main-drain", true));
  }

  @Test
  void whereItDripsAnywayThereIsNoDoubt() throws IOException {
    Installation house = withSumpAt(262);

    Outcome outcome = Trial.after(house, failure(house));

    assertThat(outcome.notes()).noneMatch(Note.DripInDoubt.class::isInstance);
  }

  private Installation withSumpAt(int level) throws IOException {
    String drawing =
        Files.readString(Path.of("..", "scenarios", "first-look", "as-drawn.json"))
            .replace("\"262 mm\"", "\"" + level + " mm\"");
    return Shipped.read(Files.writeString(folder.resolve("sump.json"), drawing));
  }

  private static Failure failure(Installation house) {
    return FailureCatalogue.of(house).stream()
        .filter(failure -> FailureNames.id(failure).equals(DRIPS))
        .findFirst()
        .orElseThrow();
  }
}
