package dryfloor.analysis.simulation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Mean flows between the kept moments of a {@link LevelHistory}. Nothing more is needed to show
 * which way water goes: between two kept moments every level runs straight, and so did what fed it.
 *
 * <p>Kept as single precision: a flow is shown with two digits. Where nothing has changed the row
 * before is shared.
 */
final class FlowHistory {

  /** Slower than this (m³/s) counts as still: a litre in twelve days. */
  private static final double STILL = 1e-9;

  private final List<float[]> means = new ArrayList<>();
  private final double[] keptSums;
  private final double[] lastSums;
  private double keptTime;
  private double lastTime;
  private boolean begun;

  /** Keeps flows over so many accounts. */
  FlowHistory(int accounts) {
    keptSums = new double[accounts];
    lastSums = new double[accounts];
  }

  /**
   * Takes down what has passed each account since the beginning (m³, backwards counted off).
   *
   * @param time no earlier than the last one (s)
   * @param keptBefore whether the moment before this one is kept
   */
  void add(double time, double[] sums, boolean keptBefore) {
    if (keptBefore && begun) {
      keepLast();
    }
    System.arraycopy(sums, 0, lastSums, 0, sums.length);
    lastTime = time;
    if (!begun) {
      begun = true;
      keptTime = time;
      System.arraycopy(sums, 0, keptSums, 0, sums.length);
    }
  }

  private void keepLast() {
    double span = lastTime - keptTime;
    if (span <= 0) {
      means.add(new float[keptSums.length]);
    } else {
      float[] mean = new float[keptSums.length];
      for (int a = 0; a < mean.length; a++) {
        double flow = (lastSums[a] - keptSums[a]) / span;
        mean[a] = Math.abs(flow) < STILL ? 0 : (float) flow;
      }
      boolean same = !means.isEmpty() && Arrays.equals(means.getLast(), mean);
      means.add(same ? means.getLast() : mean);
    }
    keptTime = lastTime;
    System.arraycopy(lastSums, 0, keptSums, 0, lastSums.length);
  }

  /**
   * Mean flows (m³/s) over each account in the spans between so many kept moments, the last of
   * which is the last moment taken down.
   */
  List<float[]> between(int moments) {
    if (means.size() < moments - 1) {
      keepLast();
    }
    return means;
  }
}
