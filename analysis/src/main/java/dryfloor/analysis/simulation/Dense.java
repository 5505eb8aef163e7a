package dryfloor.analysis.simulation;

/**
 * Small systems of linear equations whose matrix is an M-matrix: positive diagonal, no positive
 * entry off it, and dominant. Elimination needs no pivoting for these (Berman and Plemmons,
 * Nonnegative Matrices in the Mathematical Sciences, 1979), and entries that are zero are passed
 * over.
 */
final class Dense {

  private Dense() {}

  /** Factors the first {@code size} rows and columns in place. */
  static void factor(double[][] matrix, int size) {
    for (int pivot = 0; pivot < size; pivot++) {
      double[] above = matrix[pivot];
      double inverse = 1 / above[pivot];
      for (int row = pivot + 1; row < size; row++) {
        double[] current = matrix[row];
        if (current[pivot] == 0) {
          continue;
        }
        double factor = current[pivot] * inverse;
        current[pivot] = factor;
        for (int column = pivot + 1; column < size; column++) {
          current[column] -= factor * above[column];
        }
      }
    }
  }

  /** Solves for one right side in place with a factored matrix. */
  static void substitute(double[][] factors, double[] right, int size) {
    for (int row = 1; row < size; row++) {
      double[] current = factors[row];
      double sum = right[row];
      for (int column = 0; column < row; column++) {
        sum -= current[column] * right[column];
      }
      right[row] = sum;
    }
    for (int row = size - 1; row >= 0; row--) {
      double[] current = factors[row];
      double sum = right[row];
      for (int column = row + 1; column < size; column++) {
        sum -= current[column] * right[column];
      }
      right[row] = sum / current[row];
    }
  }

  /** Factors and solves in place. */
  static void solve(double[][] matrix, double[] right) {
    factor(matrix, right.length);
    substitute(matrix, right, right.length);
  }
}
