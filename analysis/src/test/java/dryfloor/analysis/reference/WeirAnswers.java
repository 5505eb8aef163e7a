package dryfloor.analysis.reference;

import dryfloor.analysis.hydraulics.Lip;
import dryfloor.analysis.hydraulics.OpenRun;
import dryfloor.analysis.hydraulics.Siphon;
import dryfloor.analysis.hydraulics.Stack;
import dryfloor.analysis.hydraulics.Weir;

/** What {@link Weir}, {@link Lip}, {@link OpenRun} and {@link Stack} say: water with air above. */
final class WeirAnswers {

  /** The Froude number that {@link Siphon#selfVentingFlow} stands for. */
  private static final double SELF_VENTING = 0.3;

  private WeirAnswers() {}

  static double flow(Given given) {
    return Weir.flow(
        given.number("head_m"), given.number("length_m"), given.number("crestHeight_m"));
  }

  static double flowWithCoefficient(Given given) {
    return Weir.withCoefficient(
        given.number("coefficient"), given.number("head_m"), given.number("length_m"));
  }

  static double drownedShare(Given given) {
    return Weir.drowning(given.number("upstreamHead_m"), given.number("downstreamHead_m"));
  }

  /** Flow over length of lip and head^1.5, at a head so small that the lip is a weir. */
  static double lipConstant(Given given) {
    double head = given.number("head_m");
    double bore = given.number("bore_m");
    return Lip.flow(head, bore) / (Math.PI * bore * head * Math.sqrt(head));
  }

  /** Head over bore at which the flow no longer goes with head^1.5. */
  static double lipHandOver(Given given) {
    double bore = given.number("bore_m");
    double head =
        Search.whereRises(
            h -> -Lip.flowPerHead(h, bore) * h / Lip.flow(h, bore), -1.0, 1e-3 * bore, bore);
    return head / bore;
  }

  static double openRunArea(Given given) {
    return OpenRun.area(given.number("depth_m"), given.number("bore_m"));
  }

  static double openRunFlow(Given given) {
    return OpenRun.flow(
        given.number("depth_m"),
        given.number("bore_m"),
        given.number("slope"),
        given.number("manning_s_per_m_cube_root"));
  }

  static double filmFlow(Given given) {
    return Stack.filmFlow(given.number("bore_m"), Stack.LEADER_SHARE);
  }

  static double selfVentingFlow(Given given) {
    return Siphon.selfVentingFlow(given.number("bore_m"));
  }

  static double froudeNumber(Given given) {
    return SELF_VENTING
        * given.number("flow_m3_per_s")
        / Siphon.selfVentingFlow(given.number("bore_m"));
  }
}
