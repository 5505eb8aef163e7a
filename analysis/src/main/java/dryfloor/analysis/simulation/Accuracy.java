package dryfloor.analysis.simulation;

/**
 * How exact a step must be.
 *
 * @param level error of a level that one step may add (m)
 * @param volume error of a volume that one step may add besides (m³)
 */
public record Accuracy(double level, double volume) {

  /** 2 µm and 0.02 mL a step: final levels come out well within 0.1 mm. */
  public static final Accuracy USUAL = new Accuracy(2e-6, 2e-8);

  /** So many times the error of a volume is allowed in pipes. */
  private static final double IN_PIPES = 5;

  /** On a wider surface than this it is the volume that must be exact, not the level (m²). */
  private static final double WIDE = 2;

  /** Error of a volume allowed for a surface of this area (m² to m³). */
  double allowed(double area) {
    return level * Math.min(area, WIDE) + volume;
  }

  /**
   * Error allowed for the water that stands in a pipe (m³): there it is the water that counts, and
   * where it goes, not how high it stands on its way.
   */
  double inPipes() {
    return IN_PIPES * volume;
  }
}
