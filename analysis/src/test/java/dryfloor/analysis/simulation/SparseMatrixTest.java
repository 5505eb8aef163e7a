package dryfloor.analysis.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Equations of water that levels out between pools, each solved and put back in. */
class SparseMatrixTest {

  @Property(tries = 300)
  void whatItFindsSolvesTheEquations(
      @ForAll @IntRange(min = 1, max = 60) int pools, @ForAll long seed) {
    Random random = new Random(seed);
    SparseMatrix matrix = new SparseMatrix(pools);
    double[][] whole = fill(matrix, pools, random);
    double[] right = random.doubles(pools, -1, 1).toArray();

    matrix.factor();
    double[] solved = right.clone();
    matrix.solve(solved);

    assertSolves(whole, solved, right);
  }

  @Property(tries = 100)
  void filledAnewItSolvesTheNewEquations(
      @ForAll @IntRange(min = 2, max = 40) int pools, @ForAll long seed) {
    Random random = new Random(seed);
    SparseMatrix matrix = new SparseMatrix(pools);
    fill(matrix, pools, random);
    matrix.factor();
    matrix.clear();
    double[][] whole = fill(matrix, pools, random);
    double[] right = random.doubles(pools, -1, 1).toArray();

    matrix.factor();
    double[] solved = right.clone();
    matrix.solve(solved);

    assertSolves(whole, solved, right);
  }

  @Test
  void poolsThatHangTogetherThroughOneHubAreSolvedWithoutFilling() {
    // Everything flows to one place: whatever the order of the rows, only its own row is long.
    int pools = 2_000;
    SparseMatrix matrix = new SparseMatrix(pools);
    for (int pool = 0; pool < pools; pool++) {
      matrix.add(pool, pool, 2);
      matrix.add(0, pool, -1);
    }
    double[] solved = new double[pools];
    solved[1] = 4;

    matrix.factor();
    matrix.solve(solved);

    assertThat(solved[1]).isEqualTo(2);
    assertThat(solved[0]).isEqualTo(2);
  }

  /** An M-matrix: each column gives to others no more than it has. */
  private static double[][] fill(SparseMatrix matrix, int pools, Random random) {
    double[][] whole = new double[pools][pools];
    for (int pool = 0; pool < pools; pool++) {
      add(matrix, whole, pool, pool, 1e-3 + random.nextDouble());
    }
    for (int link = 0; link < 2 * pools; link++) {
      int from = random.nextInt(pools);
      int to = random.nextInt(pools);
      double slope = Math.pow(10, random.nextDouble() * 6 - 3);
      add(matrix, whole, from, from, slope);
      add(matrix, whole, to, from, -slope);
    }
    return whole;
  }

  private static void add(SparseMatrix matrix, double[][] whole, int row, int column, double v) {
    matrix.add(row, column, v);
    whole[row][column] += v;
  }

  private static void assertSolves(double[][] whole, double[] solved, double[] right) {
    for (int row = 0; row < right.length; row++) {
      double sum = 0;
      double size = 1;
      for (int column = 0; column < right.length; column++) {
        sum += whole[row][column] * solved[column];
        size = Math.max(size, Math.abs(whole[row][column] * solved[column]));
      }
      assertThat(sum).isCloseTo(right[row], within(1e-10 * size));
    }
  }
}
