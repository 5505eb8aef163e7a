package dryfloor.analysis.hydraulics;

/** The vapour pressure of {@link Water} at temperatures for which there is no tank of it. */
public final class VapourCurve {

  private VapourCurve() {}

  /** Pa, at 273.15 to 647.096 K. */
  public static double at(double kelvin) {
    return Water.saturationPressure(kelvin);
  }
}
