package dryfloor.analysis.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** Levels over time with few moments kept. */
class LevelHistoryTest {

  private static final double TOLERANCE = 5e-5;

  @Test
  void aLevelThatRisesEvenlyNeedsItsTwoEndsOnly() {
    LevelHistory history = new LevelHistory(new int[] {0});
    for (int second = 0; second <= 1000; second++) {
      history.add(second, new double[] {0.001 * second});
    }
    assertThat(history.times()).containsExactly(0, 1000);
  }

  @Test
  void theMomentAtWhichAPumpStopsIsKept() {
    LevelHistory history = new LevelHistory(new int[] {0});
    for (int second = 0; second <= 1000; second++) {
      history.add(second, new double[] {0.001 * Math.min(second, 400)});
    }
    assertThat(history.times()).containsExactly(0, 400, 1000);
  }

  @Property(tries = 200)
  void noLevelLiesFartherFromTheLinesThanItMay(@ForAll long seed) {
    Random random = new Random(seed);
    LevelHistory history = new LevelHistory(new int[] {1, 0});
    List<double[]> taken = new ArrayList<>();
    double time = 0;
    double[] levels = {0, 1};
    for (int step = 0; step < 300; step++) {
      history.add(time, levels);
      taken.add(new double[] {time, levels[1], levels[0]});
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
    LevelHistory history = new LevelHistory(new int[] {0});
    for (int second = 0; second <= 1000; second++) {
      history.add(second, new double[] {0.001 * second});
    }
    assertThat(history.changesSince(900)[0]).isCloseTo(0.1, within(1e-9));
  }

  private static double[] at(LevelHistory history, double time) {
    double[] times = history.times();
    double[][] levels = history.levels();
    int after = 1;
    while (after < times.length - 1 && times[after] < time) {
      after++;
    }
    double share = (time - times[after - 1]) / (times[after] - times[after - 1]);
    double[] told = new double[levels[0].length];
    for (int column = 0; column < told.length; column++) {
      told[column] = levels[after - 1][column] * (1 - share) + levels[after][column] * share;
    }
    return told;
  }
}
