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

  /** On a wider surface than this it is the volume that must be exact, not the level (m²). */
  private static final double WIDE = 2;

  /** Error of a volume allowed for a surface of this area (m² to m³). */
  double allowed(double area) {
    return level * Math.min(area, WIDE) + volume;
  }
}
