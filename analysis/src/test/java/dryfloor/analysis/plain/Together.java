package dryfloor.analysis.plain;

import java.util.List;

/**
 * Tees that pipes join to one another: all their heads at once, by Newton's method with slopes
 * found by trial. One after the other, each follows its neighbours in tiny steps where wide pipes
 * join them. Where flows jump with the heads, this leads nowhere and leaves the rest to each tee.
 */
final class Together {

  private static final int ROUNDS = 20;

  /** What a round must leave at most, as a share of what did not balance before. */
  private static final double GAIN = 0.8;

  /** By how much a head is moved to see what comes of it (m). */
  private static final double NUDGE = 1e-6;

  /** What arrives and does not leave is nothing below this (m³/s). */
  private static final double BALANCED = 1e-12;

  private final List<Tee> tees;
  private final double seconds;

  private Together(List<Tee> tees, double seconds) {
    this.tees = tees;
    this.seconds = seconds;
  }

  static void balance(List<Tee> joined, double seconds) {
    List<Tee> moving = joined.stream().filter(tee -> tee.isMoved(seconds)).toList();
    if (moving.size() > 1) {
      new Together(moving, seconds).balance();
    }
  }

  private void balance() {
    double[] heads = tees.stream().mapToDouble(Tee::level).toArray();
    double[] nets = nets(heads);
    boolean gains = true;
    for (int round = 0; round < ROUNDS && gains && size(heads, nets) > BALANCED; round++) {
      double[] step = solved(slopes(heads, nets), nets);
      gains = false;
      for (double share = 1; share > 0.1 && !gains; share /= 2) {
        double[] tried = moved(heads, step, share);
        double[] left = nets(tried);
        if (size(tried, left) < GAIN * size(heads, nets)) {
          heads = tried;
          nets = left;
          gains = true;
        }
      }
    }
    nets(heads);
  }

  /** What arrives at each of them less what leaves. */
  private double[] nets(double[] heads) {
    for (int i = 0; i < heads.length; i++) {
      tees.get(i).setHead(heads[i]);
    }
    return tees.stream().mapToDouble(tee -> tee.net(tee.level(), seconds)).toArray();
  }

  /** All that does not balance; a pool that is empty need not. */
  private double size(double[] heads, double[] nets) {
    double size = 0;
    for (int i = 0; i < heads.length; i++) {
      size += isEmpty(i, heads, nets) ? 0 : Math.abs(nets[i]);
    }
    return size;
  }

  private boolean isEmpty(int i, double[] heads, double[] nets) {
    return heads[i] <= tees.get(i).lowest() && nets[i] <= 0;
  }

  private double[] moved(double[] heads, double[] step, double share) {
    double[] moved = new double[heads.length];
    for (int i = 0; i < heads.length; i++) {
      moved[i] = Math.max(heads[i] + share * step[i], tees.get(i).lowest());
    }
    return moved;
  }

  /** How much less stays at each when the head of one rises, a column for each (m²/s). */
  private double[][] slopes(double[] heads, double[] nets) {
    double[][] slopes = new double[heads.length][heads.length];
    for (int j = 0; j < heads.length; j++) {
      double[] nudged = heads.clone();
      nudged[j] += NUDGE;
      double[] then = nets(nudged);
      for (int i = 0; i < heads.length; i++) {
        boolean fixed = isEmpty(i, heads, nets) || isEmpty(j, heads, nets);
        slopes[i][j] = fixed ? (i == j ? 1 : 0) : (nets[i] - then[i]) / NUDGE;
      }
    }
    return slopes;
  }

  /** Elimination after Gauss; what hangs on nothing does not move. */
  private static double[] solved(double[][] slopes, double[] nets) {
    int n = nets.length;
    double[] step = nets.clone();
    for (int k = 0; k < n; k++) {
      for (int i = k + 1; i < n && slopes[k][k] > 0; i++) {
        double share = slopes[i][k] / slopes[k][k];
        for (int j = k; j < n; j++) {
          slopes[i][j] -= share * slopes[k][j];
        }
        step[i] -= share * step[k];
      }
    }
    for (int k = n - 1; k >= 0; k--) {
      for (int j = k + 1; j < n; j++) {
        step[k] -= slopes[k][j] * step[j];
      }
      step[k] = slopes[k][k] > 0 ? step[k] / slopes[k][k] : 0;
    }
    return step;
  }
}
