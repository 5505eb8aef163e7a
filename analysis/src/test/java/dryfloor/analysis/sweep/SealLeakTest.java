package dryfloor.analysis.sweep;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.installation.Shipped;
import dryfloor.analysis.installation.Trial;
import dryfloor.analysis.outcome.Ending;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.Verdict;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A pump that leaks at its seal splits its line there: between the leak and the pump's own water
 * lies a stretch that has air before the pump once the chamber is empty. Such a pump neither lifts
 * nor holds; what stands in the riser falls back through it.
 */
class SealLeakTest {

  @TempDir private Path folder = Path.of("");

  @Test
  void whatStandsAboveALeakingPumpComesToRestHoweverLongOneIsAway() throws IOException {
    String drawing =
        Files.readString(Path.of("..", "scenarios", "restaurant-seafood", "as-drawn.json"))
            .replace("\"away\": \"14 h\"", "\"away\": \"3 d\"");
    Path file = Files.writeString(folder.resolve("three-days.json"), drawing);

    Outcome outcome = Trial.after(Shipped.read(file), new Failure.PumpSealLeaks("return-pump"));

    assertThat(outcome.verdict()).isEqualTo(Verdict.CAUGHT);
    assertThat(outcome.ending()).isInstanceOf(Ending.AtRest.class);
  }
}
