package dryfloor.analysis.simulation;

/**
 * A way through a pipe, or out of one, between two heads. Between {@code solve} and the next one it
 * keeps its flow and the slopes of that flow, for the step to use.
 */
abstract sealed class Branch permits PipeBranch, HoleBranch {

  /** Account of the ledger that its flow goes to. */
  final int slot;

  /** 1, or -1 where the account counts this flow backwards. */
  final int sign;

  /** First and second end. */
  final BranchEnd[] ends;

  /** Flow from the first end to the second (m³/s). */
  double flow;

  /**
   * Slope of the flow by the head at the first end; by that at the second it is the negative
   * (m²/s).
   */
  double flowPerHead;

  /** Slope of the flow by the level of a place that acts besides its head (m²/s). */
  double flowPerLevel;

  /** That place, or -1. */
  int actingPlace = -1;

  Branch(int slot, int sign, BranchEnd first, BranchEnd second) {
    this.slot = slot;
    this.sign = sign;
    this.ends = new BranchEnd[] {first, second};
  }

  /** Solves for the flow between two heads (m), with these levels of all places (m). */
  abstract void solve(double firstHead, double secondHead, double[] levels);
}
