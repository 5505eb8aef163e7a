package dryfloor.analysis.simulation;

import dryfloor.analysis.network.FlowNetwork;
import java.util.Arrays;

/**
 * One step of the volumes in time: the linearly implicit pair of order 2(3) of Shampine and
 * Reichelt, The MATLAB ODE Suite, SIAM J. Sci. Comput. 18 (1997) 1–22, section 3. It is L-stable,
 * so a chamber that settles in milliseconds does not hold back a step of hours.
 *
 * <p>The step is taken account by account: what leaves a place over an account arrives at the other
 * end of it to the last bit, so water is kept to rounding whatever the step's error is. The matrix
 * of the step is an M-matrix, because every flow rises with the level it comes from and falls with
 * the level it goes to.
 */
final class VolumeStep {

  private static final double D = 1 / (2 + Math.sqrt(2));
  private static final double E32 = 6 + Math.sqrt(2);

  /** No step may leave a place below empty by more than this many times the error allowed. */
  private static final double BELOW_EMPTY = 5;

  private final FlowNetwork network;
  private final FlowField field;
  private final Accuracy accuracy;
  private final int places;
  private final int accounts;

  private final int[] row;
  private final int[] placeOfRow;
  private final double[][] matrix;
  private final double[] k1;
  private final double[] k2;
  private final double[] k3;
  private final double[] gains0;
  private final double[] gains1;
  private final double[] areas0;
  private final double[] right;
  private final double[] trial;

  /** Water over each account during the step (m³). */
  final double[] moved;

  /** Volumes at the end of the step (m³). */
  final double[] volumes;

  VolumeStep(FlowNetwork network, FlowField field, Accuracy accuracy) {
    this.network = network;
    this.field = field;
    this.accuracy = accuracy;
    places = network.places().size();
    accounts = network.accounts().size();
    row = new int[places];
    placeOfRow = new int[places];
    matrix = new double[places][places];
    k1 = new double[places];
    k2 = new double[places];
    k3 = new double[places];
    gains0 = new double[places];
    gains1 = new double[places];
    areas0 = new double[places];
    right = new double[places];
    trial = new double[places];
    moved = new double[accounts];
    volumes = new double[places];
  }

  /**
   * Takes a step. Afterwards the field holds the flows at its end.
   *
   * @param from volumes at the beginning (m³)
   * @param areas of all places at the beginning (m²)
   * @param gains of all places at the beginning (m³/s)
   * @param slopes of the flows at the beginning
   * @param h length of the step (s)
   * @param slopesAtEnd takes the slopes of the flows at the end
   * @return the error against what is allowed; the step is good up to 1
   */
  double take(
      double[] from, double[] areas, double[] gains, Slopes slopes, double h, Slopes slopesAtEnd) {
    System.arraycopy(gains, 0, gains0, 0, places);
    System.arraycopy(areas, 0, areas0, 0, places);
    int size = factor(slopes, h);

    solve(slopes, h, gains0, k1, size);
    for (int p = 0; p < places; p++) {
      trial[p] = from[p] + 0.5 * h * k1[p];
    }
    field.evaluate(trial);
    System.arraycopy(field.gains, 0, gains1, 0, places);
    System.arraycopy(field.flows, 0, moved, 0, accounts);

    for (int p = 0; p < places; p++) {
      trial[p] = gains1[p] - k1[p];
    }
    solve(slopes, h, trial, k2, size);
    // k2 so far is the correction that the accounts see through their slopes.
    for (int entry = 0; entry < slopes.size(); entry++) {
      int place = slopes.place(entry);
      moved[slopes.slot(entry)] += h * D * slopes.value(entry) / areas0[place] * k2[place];
    }
    System.arraycopy(from, 0, volumes, 0, places);
    for (int a = 0; a < accounts; a++) {
      moved[a] *= h;
      volumes[network.accounts().get(a).from()] -= moved[a];
      volumes[network.accounts().get(a).to()] += moved[a];
    }
    for (int p = 0; p < places; p++) {
      k2[p] += k1[p];
    }
    field.evaluate(volumes, slopesAtEnd);
    for (int p = 0; p < places; p++) {
      trial[p] = field.gains[p] - E32 * (k2[p] - gains1[p]) - 2 * (k1[p] - gains0[p]);
    }
    solve(slopes, h, trial, k3, size);
    return error(from, h);
  }

  private double error(double[] from, double h) {
    double worst = 0;
    for (int p = 0; p < places; p++) {
      if (network.places().get(p).kind().isPool()) {
        double allowed = accuracy.allowed(areas0[p]);
        double error = Math.abs(h / 6 * (k1[p] - 2 * k2[p] + k3[p]));
        double belowEmpty = Math.min(from[p], 0) - volumes[p];
        worst = Math.max(worst, Math.max(error, belowEmpty / BELOW_EMPTY) / allowed);
      }
    }
    return worst;
  }

  /** Builds and factors I − hD·J over the places that any slope touches; returns their number. */
  private int factor(Slopes slopes, double h) {
    Arrays.fill(row, -1);
    int size = 0;
    for (int entry = 0; entry < slopes.size(); entry++) {
      size = touch(slopes.place(entry), size);
    }
    for (int r = 0; r < size; r++) {
      Arrays.fill(matrix[r], 0, size, 0);
      matrix[r][r] = 1;
    }
    for (int entry = 0; entry < slopes.size(); entry++) {
      int place = slopes.place(entry);
      double share = h * D * slopes.value(entry) / areas0[place];
      int column = row[place];
      int from = row[network.accounts().get(slopes.slot(entry)).from()];
      int to = row[network.accounts().get(slopes.slot(entry)).to()];
      if (from >= 0) {
        matrix[from][column] += share;
      }
      if (to >= 0) {
        matrix[to][column] -= share;
      }
    }
    Dense.factor(matrix, size);
    return size;
  }

  private int touch(int place, int size) {
    if (row[place] < 0) {
      row[place] = size;
      placeOfRow[size] = place;
      return size + 1;
    }
    return size;
  }

  /**
   * Solves (I − hD·J) k = b. Places whose own level moves no flow only receive: they follow from
   * the others.
   */
  private void solve(Slopes slopes, double h, double[] b, double[] k, int size) {
    for (int r = 0; r < size; r++) {
      right[r] = b[placeOfRow[r]];
    }
    Dense.substitute(matrix, right, size);
    System.arraycopy(b, 0, k, 0, places);
    for (int r = 0; r < size; r++) {
      k[placeOfRow[r]] = right[r];
    }
    for (int entry = 0; entry < slopes.size(); entry++) {
      int place = slopes.place(entry);
      double carried = h * D * slopes.value(entry) / areas0[place] * k[place];
      int from = network.accounts().get(slopes.slot(entry)).from();
      int to = network.accounts().get(slopes.slot(entry)).to();
      if (row[from] < 0) {
        k[from] -= carried;
      }
      if (row[to] < 0) {
        k[to] += carried;
      }
    }
  }
}
