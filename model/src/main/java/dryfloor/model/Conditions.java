package dryfloor.model;

/**
 * What holds for the whole installation.
 *
 * @param celsius water temperature (°C)
 * @param away unattended time, after which somebody comes (s)
 */
public record Conditions(double celsius, double away) {

  /** 25 °C and a long weekend of 72 hours. */
  public static final Conditions USUAL = new Conditions(25, 72 * 3600.0);
}
