package dryfloor.analysis.simulation;

/** Where the head at an end of a branch comes from. */
sealed interface BranchEnd {

  /** The head (m), from the levels of all places and the heads of all tees (m). */
  double head(double[] levels, double[] teeHeads);

  /** The water of a place, or the air above an opening that it leaves uncovered (m). */
  record AtPlace(int place, double elevation) implements BranchEnd {
    @Override
    public double head(double[] levels, double[] teeHeads) {
      return Math.max(levels[place], elevation);
    }
  }

  /** A tee that is full of water; its head is solved for. */
  record AtTee(int tee) implements BranchEnd {
    @Override
    public double head(double[] levels, double[] teeHeads) {
      return teeHeads[tee];
    }
  }

  /** A head that does not change (m). */
  record AtHead(double head) implements BranchEnd {
    @Override
    public double head(double[] levels, double[] teeHeads) {
      return head;
    }
  }
}
