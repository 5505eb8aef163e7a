package dryfloor.analysis.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** Levels over time with few moments kept. */
class LevelHistoryTest {

  private static final double TOLERANCE = 5e-5;

  @Test
  void aLevelThatRisesEvenlyNeedsItsTwoEndsOnly() {
    LevelHistory history = new LevelHistory(1);
    for (int second = 0; second <= 1000; second++) {
      history.add(second, new double[] {0.001 * second});
    }
    assertThat(times(history)).containsExactly(0, 1000);
  }

  @Test
  void theMomentAtWhichAPumpStopsIsKept() {
    LevelHistory history = new LevelHistory(1);
    for (int second = 0; second <= 1000; second++) {
      history.add(second, new double[] {0.001 * Math.min(second, 400)});
    }
    assertThat(times(history)).containsExactly(0, 400, 1000);
  }

  @Property(tries = 200)
  void noLevelLiesFartherFromTheLinesThanItMay(@ForAll long seed) {
    Random random = new Random(seed);
    LevelHistory history = new LevelHistory(2);
    List<double[]> taken = new ArrayList<>();
    double time = 0;
    double[] levels = {0, 1};
    for (int step = 0; step < 300; step++) {
      history.add(time, levels);
      taken.add(new double[] {time, levels[0], levels[1]});
      time += random.nextDouble() * 10;
      levels = new double[] {levels[0] + random.nextGaussian() * 1e-4, Math.sin(time / 100)};
    }
    for (double[] then : taken) {
      double[] told = at(history, then[0]);
      assertThat(told[0]).isCloseTo(then[1], within(TOLERANCE * 1.0001));
      assertThat(told[1]).isCloseTo(then[2], within(TOLERANCE * 1.0001));
    }
  }

  @Test
  void tellsHowFarALevelHasMovedSinceATime() {
    LevelHistory history = new LevelHistory(1);
    for (int second = 0; second <= 1000; second++) {
      history.add(second, new double[] {0.001 * second});
    }
    assertThat(history.changeSince(900, 0)).isCloseTo(0.1, within(1e-9));
  }

  private static double[] times(LevelHistory history) {
    return IntStream.range(0, history.moments()).mapToDouble(history::time).toArray();
  }

  private static double[] at(LevelHistory history, double time) {
    int after = 1;
    while (after < history.moments() - 1 && history.time(after) < time) {
      after++;
    }
    double start = history.time(after - 1);
    double share = (time - start) / (history.time(after) - start);
    double[] told = new double[2];
    for (int column = 0; column < told.length; column++) {
      told[column] =
          history.value(after - 1, column) * (1 - share) + history.value(after, column) * share;
    }
    return told;
  }
}
