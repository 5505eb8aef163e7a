package dryfloor.analysis.simulation;

import dryfloor.analysis.network.FlowNetwork;
import java.util.Arrays;
import java.util.List;

/**
 * Solves for the heads of the tees that are full of water, so that what flows into each flows out
 * of it.
 *
 * <p>Each branch's flow rises with the head at its first end and falls with that at its second, so
 * the heads minimise a convex function (the content of the network) and the flows are unique.
 * Newton's method with a search for the lowest content along each step finds them wherever it
 * starts.
 */
final class TeeSolver {

  /** Continuity is kept to this share of the largest flow at any tee. */
  private static final double RELATIVE = 1e-11;

  /**
   * What heads of some metres can't resolve any more, and no water either (m³/s): 0.3 mL a year.
   */
  private static final double NOTHING = 1e-14;

  private static final int NEWTON_STEPS = 100;
  private static final int SEARCH_STEPS = 120;

  /** Keeps the matrix regular where every branch at a tee is shut (m²/s). */
  private static final double LEAST_SLOPE = 1e-14;

  private final State state;
  private List<Branch> branches = List.of();
  private final int count;
  private final boolean[] used;
  private final double[] excess;
  private final SparseMatrix matrix;
  private final double[] from;
  private final double[] step;

  TeeSolver(FlowNetwork network, State state) {
    this.state = state;
    count = network.tees().size();
    used = new boolean[count];
    excess = new double[count];
    matrix = new SparseMatrix(count);
    from = new double[count];
    step = new double[count];
  }

  /** Takes the branches that touch full tees. */
  void take(List<Branch> touching) {
    branches = touching;
    Arrays.fill(used, false);
    for (Branch branch : branches) {
      for (BranchEnd end : branch.ends) {
        if (end instanceof BranchEnd.AtTee at) {
          used[at.tee()] = true;
        }
      }
    }
  }

  /** Finds the heads, then adds the flows (and slopes) of the branches to the field. */
  void solve(FlowField field, boolean withSlopes) {
    if (branches.isEmpty()) {
      return;
    }
    if (!newton(field)) {
      throw new NoAnswer("the flows at the junctions did not come to a balance");
    }
    for (Branch branch : branches) {
      field.flows[branch.slot] += branch.sign * branch.flow;
      if (withSlopes) {
        field.addSlopes(branch);
      }
    }
  }

  private boolean newton(FlowField field) {
    double miss = balance(field);
    for (int i = 0; i < NEWTON_STEPS && miss > allowed(); i++) {
      System.arraycopy(state.teeHeads, 0, from, 0, count);
      fillMatrix();
      System.arraycopy(excess, 0, step, 0, count);
      matrix.factor();
      matrix.solve(step);
      double descent = descent();
      miss = go(field, 1);
      double descentAtEnd = descent();
      if (descentAtEnd < -0.5 * descent && miss > allowed()) {
        miss = goToLowest(field, descent, descentAtEnd);
      }
    }
    return miss <= allowed();
  }

  /** Sets the heads to a share of the step and balances; returns the largest excess. */
  private double go(FlowField field, double share) {
    for (int tee = 0; tee < count; tee++) {
      state.teeHeads[tee] = from[tee] + share * step[tee];
    }
    return balance(field);
  }

  /** How fast the content falls along the step where the heads are now. */
  private double descent() {
    double sum = 0;
    for (int tee = 0; tee < count; tee++) {
      sum += excess[tee] * step[tee];
    }
    return sum;
  }

  /**
   * Closes in on the lowest content along the step, which has one because the content is convex.
   */
  private double goToLowest(FlowField field, double descentAtStart, double descentAtEnd) {
    double low = 0;
    double high = 1;
    double atLow = descentAtStart;
    double atHigh = descentAtEnd;
    double miss = Double.POSITIVE_INFINITY;
    for (int i = 0; i < SEARCH_STEPS; i++) {
      double share = i % 3 == 2 ? 0.5 : Math.clamp(atLow / (atLow - atHigh), 0.01, 0.99);
      double middle = low + share * (high - low);
      miss = go(field, middle);
      double here = descent();
      if (Math.abs(here) < 1e-3 * descentAtStart || miss <= allowed()) {
        return miss;
      }
      if (here > 0) {
        low = middle;
        atLow = here;
      } else {
        high = middle;
        atHigh = here;
      }
    }
    return miss;
  }

  /** Solves all branches at the present heads; returns the largest excess of inflow at a tee. */
  private double balance(FlowField field) {
    Arrays.fill(excess, 0);
    for (Branch branch : branches) {
      branch.solve(field.head(branch.ends[0]), field.head(branch.ends[1]), field.levels);
      if (branch.ends[0] instanceof BranchEnd.AtTee at) {
        excess[at.tee()] -= branch.flow;
      }
      if (branch.ends[1] instanceof BranchEnd.AtTee at) {
        excess[at.tee()] += branch.flow;
      }
    }
    double most = 0;
    for (int tee = 0; tee < count; tee++) {
      most = Math.max(most, Math.abs(excess[tee]));
    }
    return most;
  }

  /**
   * Excess that counts as none: a share of the largest flow, or what heads can't resolve any more.
   */
  private double allowed() {
    double largest = 0;
    double steepest = 0;
    for (Branch branch : branches) {
      largest = Math.max(largest, Math.abs(branch.flow));
      steepest = Math.max(steepest, branch.flowPerHead);
    }
    double coarsest = 0;
    for (int tee = 0; tee < count; tee++) {
      coarsest = Math.max(coarsest, used[tee] ? Math.ulp(state.teeHeads[tee]) : 0);
    }
    return RELATIVE * largest + NOTHING + 4 * steepest * coarsest;
  }

  private void fillMatrix() {
    matrix.clear();
    for (int tee = 0; tee < count; tee++) {
      matrix.add(tee, tee, used[tee] ? LEAST_SLOPE : 1);
    }
    for (Branch branch : branches) {
      double slope = branch.flowPerHead;
      int first = tee(branch.ends[0]);
      int second = tee(branch.ends[1]);
      if (first >= 0) {
        matrix.add(first, first, slope);
      }
      if (second >= 0) {
        matrix.add(second, second, slope);
      }
      if (first >= 0 && second >= 0) {
        matrix.add(first, second, -slope);
        matrix.add(second, first, -slope);
      }
    }
  }

  private static int tee(BranchEnd end) {
    return end instanceof BranchEnd.AtTee at ? at.tee() : -1;
  }
}
