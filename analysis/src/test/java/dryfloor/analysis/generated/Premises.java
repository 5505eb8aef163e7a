package dryfloor.analysis.generated;

import dryfloor.model.FailureSettings;
import dryfloor.model.Sequence;
import java.util.List;

/**
 * The rooms around the units.
 *
 * @param plantRoom area (dm²)
 * @param sill of every room (mm)
 * @param floorDrain whether the plant room has one
 * @param hallSpillsDown whether what leaves the hall reaches the plant room
 * @param celsius water temperature (°C)
 * @param away unattended time (h)
 */
public record Premises(
    int plantRoom, int sill, boolean floorDrain, boolean hallSpillsDown, int celsius, int away) {

  FailureSettings settings(List<FailureSettings.HandTopUp> topUps) {
    return new FailureSettings(
        List.of(), topUps, topUps.stream().limit(1).map(this::sequence).toList(), 1e-6, 1800, 1.5);
  }

  /**
   * A seam leaks, somebody takes some water out, fills up what has been lost, and mends it an hour
   * later.
   */
  private Sequence sequence(FailureSettings.HandTopUp topUp) {
    String leak = "seam-leaks." + topUp.vessel();
    return new Sequence(
        "leak-mended",
        "A leak that is mended",
        List.of(
            new Sequence.Event.Begins(0, leak),
            new Sequence.Event.Takes(300, topUp.vessel(), topUp.volume() / 2, 0),
            new Sequence.Event.Pours(600, topUp.vessel(), topUp.volume(), 0),
            new Sequence.Event.Ends(4200, leak)));
  }

  @Override
  public String toString() {
    return String.format(
        "A plant room of %d dm2 with a sill of %d mm%s%s, water of %d °C, nobody for %d h",
        plantRoom,
        sill,
        floorDrain ? " and a floor drain" : "",
        hallSpillsDown ? ", under a hall that spills into it" : "",
        celsius,
        away);
  }
}
