package dryfloor.analysis.simulation;

import dryfloor.analysis.network.FlowNetwork;

/**
 * Between which places each account runs, and which places are pools, laid out for the inner loops:
 * what a step does some thousand times for every account should not have to ask three objects.
 */
final class AccountEnds {

  /** By account: index of the place that gives when the flow is positive. */
  final int[] from;

  /** By account: index of the place that takes. */
  final int[] to;

  /** By place: whether it has water of its own. */
  final boolean[] pool;

  AccountEnds(FlowNetwork network) {
    from = new int[network.accounts().size()];
    to = new int[from.length];
    for (int a = 0; a < from.length; a++) {
      from[a] = network.accounts().get(a).from();
      to[a] = network.accounts().get(a).to();
    }
    pool = new boolean[network.places().size()];
    for (int place = 0; place < pool.length; place++) {
      pool[place] = network.places().get(place).kind().isPool();
    }
  }

  /** Moves amounts over all accounts, each from one place to another. */
  void move(double[] over, double[] amounts) {
    for (int a = 0; a < from.length; a++) {
      double amount = over[a];
      if (amount != 0) {
        amounts[from[a]] -= amount;
        amounts[to[a]] += amount;
      }
    }
  }

  /**
   * Tells a matrix of all places where its entries will lie: most flows answer to the levels at the
   * two ends of their account, and carry salt from the one to the other. It finds its order of
   * elimination with these from the start, and again when another one comes.
   */
  void announceTo(SparseMatrix matrix) {
    for (int a = 0; a < from.length; a++) {
      if (pool[from[a]] && pool[to[a]]) {
        matrix.add(from[a], to[a], 0);
        matrix.add(to[a], from[a], 0);
      }
    }
  }
}
