package dryfloor.analysis.reference;

import dryfloor.analysis.hydraulics.VapourCurve;
import dryfloor.analysis.hydraulics.Water;

/** What {@link Water} says. */
final class WaterAnswers {

  /** EOS-80 speaks of IPTS-68; these are the degrees of it for each one of ITS-90. */
  private static final double IPTS68_PER_ITS90 = 1.00024;

  /** And of practical salinity, with so many grams of salt per kilogram for each unit. */
  private static final double GRAMS_PER_PRACTICAL = 35.16504 / 35.0;

  private WaterAnswers() {}

  static double density(Given given) {
    return water(given).density();
  }

  static double dynamicViscosity(Given given) {
    Water water = water(given);
    return water.kinematicViscosity() * water.density();
  }

  static double vapourPressure(Given given) {
    return VapourCurve.at(given.number("temperature_K"));
  }

  private static Water water(Given given) {
    double celsius =
        given.has("temperature_degC_IPTS68")
            ? given.number("temperature_degC_IPTS68") / IPTS68_PER_ITS90
            : given.number("temperature_degC");
    double salinity =
        given.has("practicalSalinity")
            ? given.number("practicalSalinity") * GRAMS_PER_PRACTICAL
            : given.number("salinity_g_per_kg");
    return Water.at(celsius, salinity);
  }
}
