package dryfloor.model;

import java.util.List;

/**
 * What the user says about failures. The list of failures itself is computed from the drawing.
 *
 * @param skipped failures switched off, each with a reason
 * @param topUps operator errors added: water poured in by hand while the pumps stand still
 * @param sequences events in time that are run like failures
 * @param dripArea area of a drip or weep (m²)
 * @param outage length of a power cut after which everything restarts (s)
 * @param surge factor by which the pressure of a supply can rise
 */
public record FailureSettings(
    List<Skipped> skipped,
    List<HandTopUp> topUps,
    List<Sequence> sequences,
    double dripArea,
    double outage,
    double surge) {

  /** Nothing skipped or added; a 1 mm² drip, a cut of 30 minutes, half as much pressure again. */
  public static final FailureSettings USUAL =
      new FailureSettings(List.of(), List.of(), List.of(), 1e-6, 1800, 1.5);

  public FailureSettings {
    skipped = List.copyOf(skipped);
    topUps = List.copyOf(topUps);
    sequences = List.copyOf(sequences);
  }

  /**
   * A failure switched off.
   *
   * @param failure its id
   * @param reason why it can't happen here
   */
  public record Skipped(String failure, String reason) {}

  /**
   * Water poured in by hand while the pumps stand still.
   *
   * @param vessel id of the vessel topped up
   * @param volume poured in (m³)
   */
  public record HandTopUp(String vessel, double volume) {}
}
