package dryfloor.app.paper;

import dryfloor.analysis.mark.VesselMarks;
import dryfloor.app.report.Amounts;

/** How a mark is told on strips and in the list, so that both say the same. */
final class MarkHeights {

  /** Closer to the rim than this (m) is at the rim. */
  private static final double AT_RIM = 5e-4;

  /** In place of a highest level, where a power loss wets a floor at the normal one already. */
  static final String NONE_IS_SAFE =
      "NO SAFE LEVEL: at the normal level a power loss already runs over here onto a floor";

  /**
   * What the highest level is called, on strips as in the list. Not safe: it says nothing of
   * failures that wet a floor today.
   */
  static final String HIGHEST = "Highest level, running";

  private MarkHeights() {}

  /** What is to be said of a highest level in the list. */
  static String doubt(VesselMarks marks) {
    return marks.powerLoss() == VesselMarks.PowerLoss.KEEPS_WHILE_A_FLOOR_GETS_WET
        ? "; a power loss wets a floor from elsewhere today"
        : "";
  }

  /** How far below the rim. */
  static String below(Amounts amounts, VesselMarks marks, double level) {
    return amounts.level(Math.max(0, marks.rim() - level)) + " below the rim";
  }

  /** The same after a power loss, which says so where the vessel runs over. */
  static String belowAfterPowerLoss(Amounts amounts, VesselMarks marks) {
    String below = below(amounts, marks, marks.afterPowerLoss());
    boolean full = marks.rim() - marks.afterPowerLoss() < AT_RIM;
    String over = full ? "at the rim, and runs over" : below + ", having run over";
    return switch (marks.powerLoss()) {
      case KEEPS, KEEPS_WHILE_A_FLOOR_GETS_WET -> full ? "at the rim" : below;
      case RUNS_OVER -> over;
      case WETS_A_FLOOR -> over + " onto a floor";
    };
  }
}
