package dryfloor.analysis.simulation;

import dryfloor.analysis.network.PipeEnd;

/**
 * Depths of water over an opening at which a pump sucks, from covered to bare (m).
 *
 * @param takesAll from which on all the flow is taken
 * @param takesNone at which none is taken any more
 * @param letsGo at which what stands above begins to fall back
 * @param bare at which it falls freely
 */
record InletDepths(double takesAll, double takesNone, double letsGo, double bare) {

  /** Water over an opening in a vessel within which a pump takes less and less (m). */
  static final double SKIN = 2e-4;

  static final InletDepths IN_VESSEL = new InletDepths(SKIN, 0, -SKIN / 10, -1e-3);
  private static final InletDepths AT_BOTTOM = new InletDepths(SKIN, SKIN / 2, SKIN / 4, 0);

  /** At an end of a pipe in a vessel or on the ground with its bottom at an elevation (m). */
  static InletDepths at(PipeEnd end, double bottom, double bore) {
    if (end.lies()) {
      return inBore(bore);
    }
    return end.elevation() + IN_VESSEL.bare < bottom ? AT_BOTTOM : IN_VESSEL;
  }

  /** A bore that must fill from the side: of a tee, or of an end that lies in a puddle. */
  static InletDepths inBore(double bore) {
    return new InletDepths(bore / 2, bore / 4, bore / 8, 0);
  }

  /** Water left before no more than a hundredth of the flow is taken (m). */
  double left(double depth) {
    return depth - takesNone - (takesAll - takesNone) / 100;
  }

  /** Share of the flow that is taken with water standing this high over the opening (m). */
  double share(double depth) {
    return Math.clamp((depth - takesNone) / (takesAll - takesNone), 0, 1);
  }

  /** Slope of {@link #share} (1/m). */
  double sharePerDepth(double depth) {
    return depth > takesNone && depth < takesAll ? 1 / (takesAll - takesNone) : 0;
  }

  /**
   * Share of what falls back through a pump without water that this one lets fall. The cube makes
   * it come on gently: most of what ever falls back slowly is a small share.
   */
  double fallsBack(double depth) {
    double bareness = bareness(depth);
    return bareness * bareness * bareness;
  }

  /** Slope of {@link #fallsBack} (1/m), zero or less. */
  double fallsBackPerDepth(double depth) {
    double bareness = bareness(depth);
    return bareness < 1 ? -3 * bareness * bareness / (letsGo - bare) : 0;
  }

  private double bareness(double depth) {
    return Math.clamp((letsGo - depth) / (letsGo - bare), 0, 1);
  }
}
