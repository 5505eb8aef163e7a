package dryfloor.analysis.simulation;

/** Where the head at an end of a branch comes from. */
sealed interface BranchEnd {

  /** The water of a place, or the air above an opening that it leaves uncovered (m). */
  record AtPlace(int place, double elevation) implements BranchEnd {}

  /** A tee that is full of water; its head is solved for. */
  record AtTee(int tee) implements BranchEnd {}

  /** A head that does not change (m). */
  record AtHead(double head) implements BranchEnd {}
}
