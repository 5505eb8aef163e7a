package dryfloor.analysis.hydraulics;

/**
 * Water as the laws see it.
 *
 * @param density kg/m³
 * @param kinematicViscosity m²/s
 * @param vapourPressure absolute, Pa
 */
public record Water(double density, double kinematicViscosity, double vapourPressure) {

  /** Temperatures on IPTS-68, which EOS-80 was written in, are this many times those on ITS-90. */
  private static final double IPTS68_PER_ITS90 = 1.00024;

  /**
   * Grams of salt per kilogram of sea water for each unit of practical salinity, in water of
   * reference composition (Millero, Feistel, Wright and McDougall 2008: 35.16504/35).
   */
  private static final double REFERENCE_SALINITY_PER_PRACTICAL = 35.16504 / 35.0;

  private static final double WARMEST = 50.0;
  private static final double SALTIEST = 80.0;

  /**
   * Rejects what is no water.
   *
   * @throws IllegalArgumentException if a value is not positive and finite
   */
  public Water {
    requirePositive("density (kg/m3)", density);
    requirePositive("kinematic viscosity (m2/s)", kinematicViscosity);
    requirePositive("vapour pressure (Pa)", vapourPressure);
  }

  /**
   * Water at atmospheric pressure.
   *
   * <p>Density: international equation of state EOS-80 at zero gauge pressure (Fofonoff and
   * Millard, UNESCO Technical Papers in Marine Science 44, 1983), published for −2 to 40 °C and
   * practical salinity 0 to 42. Viscosity: Sharqawy, Lienhard and Zubair, Desalination and Water
   * Treatment 16 (2010) 354–380, eq. 22 and 23, 0 to 180 °C, 0 to 150 g/kg, ±1.5 %. Vapour
   * pressure: that of fresh water, IAPWS-IF97 region 4 (R7-97(2012), eq. 30); salt at 35 g/kg
   * lowers it by about 2 %, which is left out and errs to the safe side in {@link
   * Siphon#highestCrest}.
   *
   * <p>Warmer than 40 °C or saltier than 42 the density polynomial runs on past its published
   * range, without a jump; past the limits below it is refused.
   *
   * @param celsius temperature, °C on ITS-90, 0 to 50
   * @param salinityGramsPerKg grams of salt per kilogram of water with its salt, 0 to 80
   * @throws IllegalArgumentException if either is outside its range
   */
  public static Water at(double celsius, double salinityGramsPerKg) {
    requireWithin("temperature (degrees Celsius)", celsius, WARMEST);
    requireWithin("salinity (g/kg)", salinityGramsPerKg, SALTIEST);
    double density =
        eos80Density(
            celsius * IPTS68_PER_ITS90, salinityGramsPerKg / REFERENCE_SALINITY_PER_PRACTICAL);
    double viscosity = dynamicViscosity(celsius, salinityGramsPerKg / 1000.0);
    return new Water(density, viscosity / density, saturationPressure(celsius + 273.15));
  }

  /**
   * EOS-80 at atmospheric pressure, kg/m³ (UNESCO 44, equation 13 and 14).
   *
   * @param t temperature, °C on IPTS-68
   * @param s practical salinity (PSS-78)
   */
  private static double eos80Density(double t, double s) {
    double fresh =
        999.842594
            + t
                * (6.793952e-2
                    + t
                        * (-9.095290e-3
                            + t * (1.001685e-4 + t * (-1.120083e-6 + t * 6.536332e-9))));
    double linear =
        0.824493 + t * (-4.0899e-3 + t * (7.6438e-5 + t * (-8.2467e-7 + t * 5.3875e-9)));
    double root = -5.72466e-3 + t * (1.0227e-4 + t * -1.6546e-6);
    return fresh + s * (linear + root * Math.sqrt(s) + 4.8314e-4 * s);
  }

  /** Sharqawy 2010 eq. 22 and 23, Pa·s; s in kg of salt per kg. */
  private static double dynamicViscosity(double t, double s) {
    double warmth = t + 64.993;
    double fresh = 4.2844e-5 + 1.0 / (0.157 * warmth * warmth - 91.296);
    double linear = 1.541 + t * (1.998e-2 - t * 9.52e-5);
    double square = 7.974 + t * (-7.561e-2 + t * 4.724e-4);
    return fresh * (1.0 + s * (linear + s * square));
  }

  /** IAPWS-IF97 eq. 30, Pa; kelvin 273.15 to 647.096. */
  static double saturationPressure(double kelvin) {
    double theta = kelvin - 0.23855557567849 / (kelvin - 0.65017534844798e3);
    double a = theta * (theta + 0.11670521452767e4) - 0.72421316703206e6;
    double b = theta * (-0.17073846940092e2 * theta + 0.12020824702470e5) - 0.32325550322333e7;
    double c = theta * (0.14915108613530e2 * theta - 0.48232657361591e4) + 0.40511340542057e6;
    double root = 2.0 * c / (-b + Math.sqrt(b * b - 4.0 * a * c));
    return 1e6 * root * root * root * root;
  }

  private static void requirePositive(String what, double value) {
    if (!(value > 0.0 && value < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "Water: " + what + " is " + value + "; it must be a positive number");
    }
  }

  private static void requireWithin(String what, double value, double most) {
    if (!(value >= 0.0 && value <= most)) {
      throw new IllegalArgumentException(
          "Water: " + what + " is " + value + "; it must lie between 0 and " + most);
    }
  }
}
