package dryfloor.analysis.simulation;

import dryfloor.analysis.hydraulics.OpenRun;
import dryfloor.analysis.network.Pipe;

/**
 * An estimate of the water that is on its way down a run with air in it. The simulation lets it
 * arrive at once and counts only what stands in the run.
 */
final class WaterInOpenRun {

  private WaterInOpenRun() {}

  /**
   * Water that runs between the crest and the second end, above what stands there (m³).
   *
   * @param flow from the first end to the second (m³/s)
   * @param standing level of what stands in the second leg (m)
   */
  static double volume(Pipe pipe, double flow, double standing) {
    double volume = 0;
    for (int i = 1; i < pipe.bends().size(); i++) {
      Pipe.Bend upper = pipe.bends().get(i - 1);
      Pipe.Bend lower = pipe.bends().get(i);
      double length = lower.along() - upper.along();
      double fall = upper.elevation() - lower.elevation();
      if (upper.along() >= pipe.crestAlong() && length > 0 && fall > 0) {
        double above = Math.clamp((upper.elevation() - standing) / fall, 0, 1);
        double slope = Math.min(fall / length, 1);
        double area = OpenRun.areaAtFlow(flow, pipe.bore(), slope, OpenRun.SMOOTH_PLASTIC);
        volume += area * length * above;
      }
    }
    return volume;
  }
}
