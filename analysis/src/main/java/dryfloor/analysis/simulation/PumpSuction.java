package dryfloor.analysis.simulation;

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
 * <p>Where the water beyond would run on by itself, as down a hose that has slipped off onto the
 * floor, nothing holds it: it runs out, and air follows.
 *
 * <p>So a chamber that only wants water gets none back: what falls covers the opening again and is
 * lifted again, and on average the pump holds. One that loses its water gets what stands above, as
 * fast as it loses it. As both follow the level alone, hours of either cost a few steps.
 *
 * @param place index of the place it sucks from
 * @param elevation of the opening (m)
 * @param depths between covered and bare
 * @param dry law of the stretch with its pumps as passages, as if they stood still
 */
record PumpSuction(int place, double elevation, InletDepths depths, PipeLaw dry) {

  /** Water over the opening (m), below zero where it is bare. */
  private double depth(double[] levels) {
    return levels[place] - elevation;
  }

  /** Water left before the pump takes next to none, a hundredth of its flow (m). */
  double left(double[] levels) {
    return depths.left(depth(levels));
  }

  /** Share of the flow taken with these levels of all places (m). */
  double share(double[] levels) {
    return depths.share(depth(levels));
  }

  /** Slope of that share by the level (1/m). */
  double sharePerDepth(double[] levels) {
    return depths.sharePerDepth(depth(levels));
  }

  /** Share of what falls back through a pump without water that this one lets fall. */
  double fallsBack(double[] levels) {
    return depths.fallsBack(depth(levels));
  }

  /** Slope of that share by the level (1/m), zero or less. */
  double fallsBackPerDepth(double[] levels) {
    return depths.fallsBackPerDepth(depth(levels));
  }
}
