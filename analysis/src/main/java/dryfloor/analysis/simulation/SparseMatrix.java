package dryfloor.analysis.simulation;

import java.util.Arrays;
import java.util.BitSet;
import java.util.PriorityQueue;

/**
 * Linear equations with few entries in each row, whose matrix is an M-matrix: positive diagonal, no
 * positive entry off it, no column summing to less than nothing. Elimination in any order then
 * needs no pivoting (Berman and Plemmons, Nonnegative Matrices in the Mathematical Sciences, 1979;
 * from memory), so the order is free to keep the factors sparse: the unknown that touches the
 * fewest others goes first (minimum degree; George and Liu, SIAM Review 31, 1989, 1–19; from
 * memory).
 *
 * <p>Where entries lie is remembered, and the order with it: filling and factoring again costs only
 * the numbers.
 */
final class SparseMatrix {

  private final int order;

  // The matrix by rows, in the order of its entries' first coming.
  private final int[][] columns;
  private final double[][] values;
  private final int[] sizes;
  private boolean orderIsStale = true;

  // The factors row after row, in the order of elimination: where each row begins, where its
  // diagonal lies, and by entry its column and its value.
  private final int[] unknownAt;
  private final int[] rankOf;
  private final int[] starts;
  private final int[] diagonal;
  private int[] factorColumns = new int[0];
  private double[] factors = new double[0];

  /** By row of the matrix and entry: its column among the factors. */
  private final int[][] ranks;

  private final double[] work;

  /** A matrix with nothing in it but room on its diagonal. */
  SparseMatrix(int order) {
    this.order = order;
    columns = new int[order][];
    values = new double[order][];
    sizes = new int[order];
    for (int row = 0; row < order; row++) {
      columns[row] = new int[] {row, 0, 0, 0};
      values[row] = new double[4];
      sizes[row] = 1;
    }
    unknownAt = new int[order];
    rankOf = new int[order];
    starts = new int[order + 1];
    diagonal = new int[order];
    ranks = new int[order][];
    work = new double[order];
  }

  /** Sets all entries to zero; where they lie stays known. */
  void clear() {
    for (int row = 0; row < order; row++) {
      Arrays.fill(values[row], 0, sizes[row], 0);
    }
  }

  void add(int row, int column, double value) {
    int[] known = columns[row];
    int size = sizes[row];
    for (int entry = 0; entry < size; entry++) {
      if (known[entry] == column) {
        values[row][entry] += value;
        return;
      }
    }
    if (size == known.length) {
      columns[row] = Arrays.copyOf(known, 2 * size);
      values[row] = Arrays.copyOf(values[row], 2 * size);
    }
    columns[row][size] = column;
    values[row][size] = value;
    sizes[row]++;
    orderIsStale = true;
  }

  /** Makes the factors of the matrix as it stands. */
  void factor() {
    if (orderIsStale) {
      findOrder();
      orderIsStale = false;
    }
    for (int rank = 0; rank < order; rank++) {
      fill(rank);
      int atDiagonal = diagonal[rank];
      for (int entry = starts[rank]; entry < atDiagonal; entry++) {
        int pivot = factorColumns[entry];
        double share = work[pivot] * factors[diagonal[pivot]];
        work[pivot] = share;
        if (share != 0) {
          subtract(pivot, share);
        }
      }
      for (int entry = starts[rank]; entry < starts[rank + 1]; entry++) {
        factors[entry] = work[factorColumns[entry]];
      }
      factors[atDiagonal] = 1 / factors[atDiagonal];
    }
  }

  /** Spreads the row of the matrix that is next over the columns of its factors. */
  private void fill(int rank) {
    for (int entry = starts[rank]; entry < starts[rank + 1]; entry++) {
      work[factorColumns[entry]] = 0;
    }
    int row = unknownAt[rank];
    int[] into = ranks[row];
    double[] from = values[row];
    for (int entry = 0; entry < into.length; entry++) {
      work[into[entry]] = from[entry];
    }
  }

  private void subtract(int pivot, double share) {
    for (int entry = diagonal[pivot] + 1; entry < starts[pivot + 1]; entry++) {
      work[factorColumns[entry]] -= share * factors[entry];
    }
  }

  /** Solves for one right side, in place, with the factors made last. */
  void solve(double[] right) {
    for (int rank = 0; rank < order; rank++) {
      double sum = right[unknownAt[rank]];
      for (int entry = starts[rank]; entry < diagonal[rank]; entry++) {
        sum -= factors[entry] * work[factorColumns[entry]];
      }
      work[rank] = sum;
    }
    for (int rank = order - 1; rank >= 0; rank--) {
      double sum = work[rank];
      for (int entry = diagonal[rank] + 1; entry < starts[rank + 1]; entry++) {
        sum -= factors[entry] * work[factorColumns[entry]];
      }
      work[rank] = sum * factors[diagonal[rank]];
      right[unknownAt[rank]] = work[rank];
    }
  }

  /** Finds an order and where the factors' entries will lie. */
  private void findOrder() {
    BitSet[] neighbours = neighbours();
    PriorityQueue<Long> byDegree = new PriorityQueue<>();
    for (int unknown = 0; unknown < order; unknown++) {
      byDegree.add(key(neighbours[unknown].cardinality(), unknown));
    }
    Arrays.fill(rankOf, -1);
    int rank = 0;
    while (rank < order) {
      long least = byDegree.remove();
      int unknown = (int) least;
      if (rankOf[unknown] < 0 && key(neighbours[unknown].cardinality(), unknown) == least) {
        rankOf[unknown] = rank;
        unknownAt[rank++] = unknown;
        eliminate(unknown, neighbours, byDegree);
      }
    }
    layOut(neighbours);
  }

  private static long key(int degree, int unknown) {
    return ((long) degree << 32) | unknown;
  }

  private BitSet[] neighbours() {
    BitSet[] neighbours = new BitSet[order];
    Arrays.setAll(neighbours, unknown -> new BitSet());
    for (int row = 0; row < order; row++) {
      for (int entry = 0; entry < sizes[row]; entry++) {
        int column = columns[row][entry];
        if (column != row) {
          neighbours[row].set(column);
          neighbours[column].set(row);
        }
      }
    }
    return neighbours;
  }

  /** What was joined through the unknown is joined directly from now on. */
  private static void eliminate(int unknown, BitSet[] neighbours, PriorityQueue<Long> byDegree) {
    BitSet around = neighbours[unknown];
    for (int one = around.nextSetBit(0); one >= 0; one = around.nextSetBit(one + 1)) {
      neighbours[one].or(around);
      neighbours[one].clear(one);
      neighbours[one].clear(unknown);
      byDegree.add(key(neighbours[one].cardinality(), one));
    }
  }

  /**
   * Row by row, columns before the diagonal and after it. After elimination the neighbours left to
   * an unknown are those that came later.
   */
  private void layOut(BitSet[] later) {
    int[] before = new int[order];
    for (int unknown = 0; unknown < order; unknown++) {
      later[unknown].stream().forEach(other -> before[rankOf[other]]++);
    }
    for (int rank = 0; rank < order; rank++) {
      diagonal[rank] = starts[rank] + before[rank];
      starts[rank + 1] = diagonal[rank] + 1 + later[unknownAt[rank]].cardinality();
    }
    factorColumns = new int[starts[order]];
    factors = new double[starts[order]];
    int[] filled = starts.clone();
    for (int rank = 0; rank < order; rank++) {
      int[] after = later[unknownAt[rank]].stream().map(other -> rankOf[other]).sorted().toArray();
      factorColumns[diagonal[rank]] = rank;
      System.arraycopy(after, 0, factorColumns, diagonal[rank] + 1, after.length);
      for (int other : after) {
        factorColumns[filled[other]++] = rank;
      }
    }
    for (int row = 0; row < order; row++) {
      ranks[row] = Arrays.stream(columns[row], 0, sizes[row]).map(at -> rankOf[at]).toArray();
    }
  }
}
