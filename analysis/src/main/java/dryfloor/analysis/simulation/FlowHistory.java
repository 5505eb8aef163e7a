package dryfloor.analysis.simulation;

import dryfloor.analysis.network.Succession;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Mean flows between the kept moments of a {@link LevelHistory}. Nothing more is needed to show
 * which way water goes: between two kept moments every level runs straight, and so did what fed it.
 *
 * <p>Only changes that show are kept, in single precision: a sweep keeps hundreds of courses at a
 * time, and a flow is shown with two digits.
 */
final class FlowHistory {

  /** A change of less than this share of a flow does not show. */
  private static final double SHOWS = 0.02;

  /** Nor does one of less than this (m³/s): a twentieth of a litre in a minute. */
  private static final double LEAST = 0.05e-3 / 60;

  private static final int[] NONE = {};
  private static final float[] NO_RATES = {};

  private final List<int[]> changed = new ArrayList<>();
  private final List<float[]> rates = new ArrayList<>();
  private final float[] present;
  private final double[] keptSums;
  private final double[] lastSums;
  private final int[] which;
  private double keptTime;
  private double lastTime;
  private boolean begun;

  /** Keeps flows over so many accounts. */
  FlowHistory(int accounts) {
    present = new float[accounts];
    keptSums = new double[accounts];
    lastSums = new double[accounts];
    which = new int[accounts];
  }

  /** Goes on with a history of a network before; accounts that are new have carried nothing. */
  FlowHistory(FlowHistory before, Succession succession, int accounts) {
    this(accounts);
    for (int[] indices : before.changed) {
      changed.add(Arrays.stream(indices).map(succession::account).toArray());
    }
    rates.addAll(before.rates);
    for (int a = 0; a < before.present.length; a++) {
      present[succession.account(a)] = before.present[a];
    }
    succession.accounts(before.keptSums, keptSums);
    succession.accounts(before.lastSums, lastSums);
    keptTime = before.keptTime;
    lastTime = before.lastTime;
    begun = before.begun;
  }

  /**
   * Takes down what has passed each account since the beginning (m³, backwards counted off).
   *
   * @param time no earlier than the last one (s)
   * @param keptBefore whether the moment before this one is kept
   */
  void add(double time, double[] sums, boolean keptBefore) {
    if (!begun) {
      begun = true;
      keptTime = time;
      System.arraycopy(sums, 0, keptSums, 0, sums.length);
    } else if (keptBefore) {
      keepLast();
    }
    lastTime = time;
    System.arraycopy(sums, 0, lastSums, 0, sums.length);
  }

  private void keepLast() {
    double span = lastTime - keptTime;
    int count = 0;
    for (int a = 0; a < present.length && span > 0; a++) {
      double mean = (lastSums[a] - keptSums[a]) / span;
      if (shows(mean, present[a])) {
        present[a] = Math.abs(mean) < LEAST ? 0 : (float) mean;
        which[count++] = a;
      }
    }
    changed.add(count == 0 ? NONE : Arrays.copyOf(which, count));
    rates.add(count == 0 ? NO_RATES : presentOf(count));
    keptTime = lastTime;
    System.arraycopy(lastSums, 0, keptSums, 0, lastSums.length);
  }

  /** Whether a flow has changed so far that it is to be shown anew; one that ends always is. */
  private static boolean shows(double mean, float before) {
    boolean ends = before != 0 && Math.abs(mean) < LEAST;
    return ends || Math.abs(mean - before) > Math.max(LEAST, SHOWS * Math.abs(before));
  }

  private float[] presentOf(int count) {
    float[] values = new float[count];
    for (int i = 0; i < count; i++) {
      values[i] = present[which[i]];
    }
    return values;
  }

  /** Which accounts change their flow in each span, the last moment taken down ending the last. */
  List<int[]> changed(int moments) {
    finish(moments);
    return changed;
  }

  /** The flows (m³/s) that they change to. */
  List<float[]> rates(int moments) {
    finish(moments);
    return rates;
  }

  private void finish(int moments) {
    if (changed.size() < moments - 1) {
      keepLast();
    }
  }
}
