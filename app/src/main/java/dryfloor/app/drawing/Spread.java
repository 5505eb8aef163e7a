package dryfloor.app.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Places things in a row as near as possible to where each would like to be, without overlap and
 * without changing their order: least squares under order, by pooling neighbours that push each
 * other (pool-adjacent-violators; Barlow and others 1972, from memory).
 */
final class Spread {

  private Spread() {}

  private static final class Pool {
    private double sum;
    private int count;

    private Pool(double wish) {
      this.sum = wish;
      this.count = 1;
    }

    private double mean() {
      return sum / count;
    }
  }

  /**
   * Left ends of things with these spans that would like to have their middles there.
   *
   * @param wishes middle of each thing, in order
   * @param spans width of each thing
   */
  static double[] leftEnds(double[] wishes, double[] spans) {
    double[] offsets = new double[spans.length];
    for (int i = 1; i < spans.length; i++) {
      offsets[i] = offsets[i - 1] + spans[i - 1];
    }
    List<Pool> pools = new ArrayList<>();
    for (int i = 0; i < spans.length; i++) {
      pools.add(new Pool(wishes[i] - spans[i] / 2 - offsets[i]));
      while (pools.size() > 1 && pools.getLast().mean() < pools.get(pools.size() - 2).mean()) {
        Pool last = pools.removeLast();
        pools.getLast().sum += last.sum;
        pools.getLast().count += last.count;
      }
    }
    double[] ends = new double[spans.length];
    int i = 0;
    for (Pool pool : pools) {
      for (int k = 0; k < pool.count; k++, i++) {
        ends[i] = pool.mean() + offsets[i];
      }
    }
    return ends;
  }
}
