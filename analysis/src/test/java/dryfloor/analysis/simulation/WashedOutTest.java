package dryfloor.analysis.simulation;

import static dryfloor.analysis.installation.Plan.box;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.analysis.installation.Plan;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Fresh water runs through a tank of 100 L at 35 g/kg, from there into a second one of as much, and
 * on to the sewer. Both are well mixed: when n times its water has passed, 35 e^−n is left in the
 * first, 35 (1 + n) e^−n in the second.
 */
class WashedOutTest {

  private static final double TANK = 0.1;

  private final SaltBooks books = new SaltBooks(tanks());

  @BeforeEach
  void bothAreSalty() {
    books.fill("first", TANK, 35);
    books.fill("second", TANK, 35);
  }

  @ParameterizedTest
  @CsvSource({"0.5, 21.229, 31.843", "1, 12.876, 25.752", "3, 1.7426, 6.9702"})
  void saltGoesByTheExponentialOfWhatPassed(double times, double first, double second) {
    washOut(times);

    assertThat(books.salinity("first")).isCloseTo(first, within(0.02));
    assertThat(books.salinity("second")).isCloseTo(second, within(0.02));
  }

  @ParameterizedTest
  @ValueSource(doubles = {20, 50, 100, 1000, 5000, 20_000, 100_000, 1e6})
  void noMoreSaltIsWashedOutThanThereIs(double times) {
    washOut(times);

    assertThat(books.salinity("first")).isBetween(-1e-9, 0.0035);
    assertThat(books.salinity("second")).isBetween(-1e-9, 0.0035);
    assertThat(books.salt("sewer")).isCloseTo(2 * 35 * TANK, within(1e-3));
  }

  /** 80 L run from the first into the second; then 2 L come from the tap: 35 · 20 / 22. */
  @Test
  void freshWaterThatComesWhenATankHasDrainedDilutesWhatIsLeft() {
    books.pass(0.08, "first", "second");
    books.pass(0.002, "tap", "first");
    books.salt.finish();

    assertThat(books.salinity("first")).isCloseTo(35.0 * 20 / 22, within(0.02));
    assertThat(books.salinity("second")).isCloseTo(35, within(0.02));
  }

  private void washOut(double times) {
    books.pass(times * TANK, "tap", "first", "second", "sewer");
    books.salt.finish();
  }

  private static Plan tanks() {
    return Plan.of("Two tanks washed out")
        .storey("ground", 0)
        .floor("hall", 100)
        .source("tap", 3, 2e-5)
        .drain("sewer", -1)
        .vessel("first", box(1, 1, 0.3), v -> v.in("hall").raised(1).level(0.1))
        .vessel("second", box(1, 1, 0.3), v -> v.in("hall").level(0.1))
        .run("inlet", r -> r.fromSupply("tap").to("first", 0.29).length(1).bore(0.01))
        .run("over", r -> r.fromLip("first", 0.1).to("second", 0.29).length(1).bore(0.1))
        .run("away", r -> r.fromLip("second", 0.1).toDrain("sewer").length(1).bore(0.1));
  }
}
