package dryfloor.analysis.reference;

import dryfloor.analysis.hydraulics.Physical;
import dryfloor.analysis.hydraulics.Siphon;
import dryfloor.analysis.hydraulics.Water;
import dryfloor.analysis.simulation.SiphonInSimulation;

/** What {@link Siphon} says, alone and in a simulation. */
final class SiphonAnswers {

  private static final double VISCOSITY = 1e-6;

  private SiphonAnswers() {}

  /**
   * Height over the upstream surface to which water can be lifted; a source may want more than
   * vapour pressure kept, or measure from elsewhere.
   */
  static double highestCrest(Given given) {
    double lost = given.numberOrZero("headToSpare_m");
    if (given.has("bore_m")) {
      lost += PipeAnswers.Pipe.of(given).head(given.number("flow_m3_per_s"));
    }
    Water water =
        new Water(given.number("density_kg_per_m3"), VISCOSITY, given.number("pressureToKeep_Pa"));
    double crest = Siphon.highestCrest(lost, water);
    return given.has("measuredDownFrom_m")
        ? given.number("measuredDownFrom_m") - crest
        : crest - given.numberOrZero("measuredFrom_m");
  }

  /**
   * Pressure at the crest of a siphon that runs full; absolute where the air is given, else gauge.
   */
  static double crestPressure(Given given) {
    double density = given.number("density_kg_per_m3");
    double bore = given.number("bore_m");
    double flow =
        given.has("flow_m3_per_s")
            ? given.number("flow_m3_per_s")
            : PipeAnswers.flowUnderHead(given);
    double upToCrest = given.number("lossCoefficientUpToCrest") + 1.0;
    double lost = new PipeAnswers.Pipe(bore, 0.0, 0.0, upToCrest, 1e-8).head(flow);
    Water water = new Water(density, VISCOSITY, 1.0);
    double spare = Siphon.highestCrest(lost, water) - given.number("crestOverSurface_m");
    double overStandardAir = spare * density * Physical.GRAVITY + 1.0 - Physical.ATMOSPHERE;
    return overStandardAir + given.numberOrZero("air_Pa");
  }

  static double simulatedCrestPressure(Given given) {
    return simulated(given).crestPressureHead()
        * given.number("density_kg_per_m3")
        * Physical.GRAVITY;
  }

  static double simulatedVelocity(Given given) {
    return simulated(given).flow() / PipeAnswers.area(given.number("bore_m"));
  }

  private static SiphonInSimulation simulated(Given given) {
    return SiphonInSimulation.of(
        given.number("bore_m"),
        given.number("head_m"),
        given.number("crestOverSurface_m"),
        given.number("spreadLossCoefficient"),
        given.number("crestAtShareOfLength"));
  }

  static double timeForVolume(Given given) {
    return given.number("volume_m3") / PipeAnswers.flowUnderHead(given);
  }

  static double airClearingVelocity(Given given) {
    return Siphon.airClearingVelocity(
        given.number("bore_m"), Math.toRadians(given.number("slope_deg")));
  }
}
