package dryfloor.analysis.simulation;

import dryfloor.analysis.network.PipeEnd;
import dryfloor.analysis.network.PipeLaw;

/**
 * Where a running pump sucks, and what it does as its opening comes out of the water.
 *
 * <p>A skin of water over the opening lies between covered and uncovered. In it the pump takes less
 * and less, so that the level rests where it takes just what arrives: the sliding state of
 * Filippov, Differential Equations with Discontinuous Righthand Sides (1988), with the
 * discontinuity spread over the skin. At the opening it takes nothing and holds what it has lifted.
 * In the millimetre below it loses its hold: a pump that gets only air has no head, and what stands
 * above it falls back through it as through a stopped one, where no check valve holds.
 *
 * <p>So a chamber that only wants water gets none back: what falls covers the opening again and is
 * lifted again, and on average the pump holds. One that loses its water gets what stands above, as
 * fast as it loses it. As both follow the level alone, hours of either cost a few steps.
 *
 * @param place index of the place it sucks from
 * @param elevation of the opening (m)
 * @param depths between covered and uncovered
 * @param dry law of the stretch with its pumps as passages, as if they stood still
 */
record PumpSuction(int place, double elevation, Depths depths, PipeLaw dry) {

  /** Water over an opening in a vessel within which a pump takes less and less (m). */
  static final double SKIN = 2e-4;

  private static final Depths IN_VESSEL = new Depths(SKIN, 0, -SKIN / 10, -1e-3);
  private static final Depths AT_BOTTOM = new Depths(SKIN, SKIN / 2, SKIN / 4, 0);

  /**
   * Depths of water over an opening, from covered to bare (m).
   *
   * @param takesAll from which on all the flow is taken
   * @param takesNone at which none is taken any more
   * @param letsGo at which what stands above begins to fall back
   * @param bare at which it falls freely
   */
  private record Depths(double takesAll, double takesNone, double letsGo, double bare) {

    double share(double depth) {
      return Math.clamp((depth - takesNone) / (takesAll - takesNone), 0, 1);
    }

    double sharePerDepth(double depth) {
      return depth > takesNone && depth < takesAll ? 1 / (takesAll - takesNone) : 0;
    }

    double bareness(double depth) {
      return Math.clamp((letsGo - depth) / (letsGo - bare), 0, 1);
    }
  }

  /** An opening in a vessel with its bottom at an elevation (m). */
  static PumpSuction inVessel(PipeEnd end, double bottom, PipeLaw dry) {
    boolean atBottom = end.elevation() + IN_VESSEL.bare() < bottom;
    return new PumpSuction(end.place(), end.elevation(), atBottom ? AT_BOTTOM : IN_VESSEL, dry);
  }

  /** A bore that must fill from the side: of a tee, or of an end that lies in a puddle. */
  static PumpSuction inBore(PipeEnd end, double bore, PipeLaw dry) {
    Depths depths = new Depths(bore / 2, bore / 4, bore / 8, 0);
    return new PumpSuction(end.place(), end.elevation(), depths, dry);
  }

  /** Water over the opening (m), below zero where it is bare. */
  private double depth(double[] levels) {
    return levels[place] - elevation;
  }

  /** Share of the flow taken with these levels of all places (m). */
  double share(double[] levels) {
    return depths.share(depth(levels));
  }

  /** Slope of that share by the level (1/m). */
  double sharePerDepth(double[] levels) {
    return depths.sharePerDepth(depth(levels));
  }

  /**
   * Share of what falls back through a pump without water that this one lets fall. The cube makes
   * it come on gently: most of what ever falls back slowly is a small share.
   */
  double fallsBack(double[] levels) {
    double bareness = depths.bareness(depth(levels));
    return bareness * bareness * bareness;
  }

  /** Slope of that share by the level (1/m), zero or less. */
  double fallsBackPerDepth(double[] levels) {
    double bareness = depths.bareness(depth(levels));
    return bareness < 1 ? -3 * bareness * bareness / (depths.letsGo() - depths.bare()) : 0;
  }

  /** Share of the flow that is taken with water standing this high over an opening (m). */
  static double share(double depth) {
    return IN_VESSEL.share(depth);
  }

  /** Slope of {@link #share} (1/m). */
  static double sharePerDepth(double depth) {
    return IN_VESSEL.sharePerDepth(depth);
  }
}
