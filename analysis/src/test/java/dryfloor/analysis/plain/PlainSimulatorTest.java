package dryfloor.analysis.plain;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.installation.Shipped;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The engine and the plain simulator say the same about the same installation. */
class PlainSimulatorTest {

  private static final Patience WITH_A_SAMPLE = Patience.ofSteps(30_000);
  private static final int STEPS_OF_ALL = 400_000;
  private static final String WHICH = "dryfloor.plain";
  private static final String FAILURES = "dryfloor.plain.failures";
  private static final String SECONDS = "dryfloor.plain.seconds";

  @ParameterizedTest
  @ValueSource(
      strings = {"first-look/as-drawn", "loft-reservoir/corrected", "restaurant-seafood/corrected"})
  void normalOperationSettlesAtTheSameLevels(String scenario) {
    TwoAnswers answers = new TwoAnswers(scenario, Shipped.named(scenario), WITH_A_SAMPLE);
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
    TwoAnswers answers = new TwoAnswers(scenario, Shipped.named(scenario), WITH_A_SAMPLE);
    List<Entry> entries = answers.failures(id -> id.matches(failures));
    assertThat(entries).isNotEmpty();
    assertAgrees(entries);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 5, 8, 13, 34, 55})
  void inventedHousesEndTheSame(long seed) {
    TwoAnswers answers = new TwoAnswers("invented/" + seed, InventedHouse.of(seed), WITH_A_SAMPLE);
    List<Entry> entries =
        answers.failures(
            id -> id.matches("power-lost.*|pump-stops.*|siphon-break.*|check.*|parts.*drain"));
    assertThat(entries).isNotEmpty();
    assertAgrees(entries);
  }

  /**
   * An hour or more. The property is {@code all}, or what the path of a scenario contains; another
   * may say which failures are asked, as a pattern. Each may take so many seconds. Renews the
   * record that the page on trust is written from.
   */
  @Test
  @EnabledIfSystemProperty(named = WHICH, matches = ".+")
  void everyFailureOfEveryScenarioEndsTheSame() throws IOException {
    String which = System.getProperty(WHICH, "all");
    Patience patience = new Patience(STEPS_OF_ALL, Integer.getInteger(SECONDS, 60));
    List<Entry> all = new ArrayList<>();
    for (String scenario : Shipped.names()) {
      if (which.equals("all") || scenario.contains(which)) {
        TwoAnswers answers = new TwoAnswers(scenario, Shipped.named(scenario), patience);
        all.addAll(renew(scenario, answers));
      }
    }
    assertAgrees(all.stream().filter(Entry.Compared.class::isInstance).toList());
  }

  private static List<Entry> renew(String scenario, TwoAnswers answers) throws IOException {
    Optional<String> some = Optional.ofNullable(System.getProperty(FAILURES));
    if (some.isPresent()) {
      List<Entry> entries = answers.failures(id -> id.matches(some.get()));
      ComparisonRecord.renewSome(scenario, entries);
      return entries;
    }
    List<Entry> entries = new ArrayList<>(List.of(answers.normalOperation()));
    entries.addAll(answers.failures(id -> true));
    ComparisonRecord.renew(scenario, entries);
    return entries;
  }

  /** What was not compared does not agree. */
  private static void assertAgrees(List<Entry> entries) {
    assertThat(entries)
        .filteredOn(
            entry ->
                switch (entry) {
                  case Entry.NotCompared not -> true;
                  case Entry.Compared compared ->
                      !compared.comparison().agrees()
                          && Explained.of(compared.comparison()).isEmpty();
                })
        .as("what engine and plain simulator answer differently")
        .isEmpty();
  }
}
