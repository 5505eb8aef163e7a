package dryfloor.analysis.plain;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.installation.Shipped;
import dryfloor.model.Installation;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The engine and the plain simulator say the same about the same installation. */
class PlainSimulatorTest {

  private static final int STEPS_OF_A_SAMPLE = 30_000;
  private static final int STEPS_OF_ALL = 100_000;
  private static final Path SCENARIOS = Path.of("..", "scenarios");
  private static final String WHICH = "dryfloor.plain";

  @ParameterizedTest
  @ValueSource(
      strings = {"first-look/as-drawn", "loft-reservoir/corrected", "restaurant-seafood/corrected"})
  void normalOperationSettlesAtTheSameLevels(String scenario) {
    TwoAnswers answers = new TwoAnswers(scenario, read(scenario), STEPS_OF_A_SAMPLE);
    assertAgrees(List.of(answers.normalOperation()));
  }

  @ParameterizedTest
  @CsvSource({
    "first-look/as-drawn, 'power-lost.*|power-flickers.*|pump-stops.*|check-valve.*'",
    "first-look/as-drawn, 'siphon-break.*|stuck.*|parts.*main-drain|.*slips-out.*|clogged.teeth'",
    "first-look/as-drawn, 'seam-leaks.display|wall-fails.overflow-box|wall-fails.top-off'",
    "loft-reservoir/corrected, 'power.*|pump-stops.*|stuck.*|supply.*|drain-takes.*|clogged.comb'",
    "loft-reservoir/corrected, 'wall-fails.*|seam-leaks.(display|sump)|topped.*'",
    "restaurant-seafood/corrected, 'power-lost.building|circuit-trips.cold.*'"
  })
  void samplesOfFailuresEndTheSame(String scenario, String failures) {
    TwoAnswers answers = new TwoAnswers(scenario, read(scenario), STEPS_OF_A_SAMPLE);
    List<Comparison> comparisons = answers.failures(id -> id.matches(failures));
    assertThat(comparisons).isNotEmpty();
    assertAgrees(comparisons);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 5, 8, 13, 34, 55})
  void inventedHousesEndTheSame(long seed) {
    TwoAnswers answers =
        new TwoAnswers("invented/" + seed, InventedHouse.of(seed), STEPS_OF_A_SAMPLE);
    List<Comparison> comparisons =
        answers.failures(
            id -> id.matches("power-lost.*|pump-stops.*|siphon-break.*|check.*|parts.*drain"));
    assertThat(comparisons).isNotEmpty();
    assertAgrees(comparisons);
  }

  /**
   * Hours. The property is {@code all}, or what the path of a scenario contains. Writes {@code
   * target/differences.md}.
   */
  @Test
  @EnabledIfSystemProperty(named = WHICH, matches = ".+")
  void everyFailureOfEveryScenarioEndsTheSame() throws IOException {
    String which = System.getProperty(WHICH, "all");
    List<Comparison> comparisons = new ArrayList<>();
    for (Path file : Shipped.files()) {
      String scenario = SCENARIOS.relativize(file).toString();
      if (which.equals("all") || scenario.contains(which)) {
        TwoAnswers answers = new TwoAnswers(scenario, Shipped.read(file), STEPS_OF_ALL);
        comparisons.add(answers.normalOperation());
        comparisons.addAll(answers.failures(id -> true));
        DifferencesReport.write(comparisons, Path.of("target", "differences.md"));
      }
    }
    assertAgrees(comparisons.stream().filter(Comparison::finished).toList());
  }

  private static void assertAgrees(List<Comparison> comparisons) {
    assertThat(comparisons)
        .filteredOn(comparison -> !comparison.agrees() && Explained.of(comparison).isEmpty())
        .as("what engine and plain simulator answer differently")
        .isEmpty();
  }

  private static Installation read(String scenario) {
    return Shipped.read(SCENARIOS.resolve(scenario + ".json"));
  }
}
