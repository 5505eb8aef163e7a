package dryfloor.analysis.plain;

/**
 * Between which levels a place swings at the end: those that it passed both in the last stretch of
 * time and in the one before. What rises or falls throughout passes each level once and has no
 * swing.
 */
final class Swing {

  /** Less than this is no swing (m). */
  private static final double LEAST = 1e-4;

  private double lowestBefore = Double.POSITIVE_INFINITY;
  private double highestBefore = Double.NEGATIVE_INFINITY;
  private double lowest = Double.POSITIVE_INFINITY;
  private double highest = Double.NEGATIVE_INFINITY;

  /**
   * Takes note of a level.
   *
   * @param last whether this is the last stretch, and not the one before
   */
  void pass(double level, boolean last) {
    if (last) {
      lowest = Math.min(lowest, level);
      highest = Math.max(highest, level);
    } else {
      lowestBefore = Math.min(lowestBefore, level);
      highestBefore = Math.max(highestBefore, level);
    }
  }

  /** The level within the swing that is nearest to another; the final level where none swings. */
  double nearest(double other, double finalLevel) {
    double low = Math.max(lowest, lowestBefore);
    double high = Math.min(highest, highestBefore);
    return high - low > LEAST ? Math.clamp(other, low, high) : finalLevel;
  }
}
