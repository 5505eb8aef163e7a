package dryfloor.analysis.outcome;

import java.util.List;

/**
 * How much water went from where to where, over each path. What a place held at first, plus what
 * arrived, minus what left, is what it holds at the end, to rounding.
 *
 * @param entries one for each path and direction that carried water, in the order of the drawing
 * @param standing water in pipes and devices before and after
 * @param until time up to which it counts (s after the failure): the unattended time, but where all
 *     repeats itself no longer than it took to see that
 * @param imbalance what all the places together gained without it coming from outside (m³):
 *     rounding
 */
public record Ledger(List<Entry> entries, List<Standing> standing, double until, double imbalance) {

  public Ledger {
    entries = List.copyOf(entries);
    standing = List.copyOf(standing);
  }

  /**
   * Water over one path in one direction.
   *
   * @param path id of the run, weir, vessel (its rim or leak) or floor (its sill)
   * @param way how it went
   * @param from id of the place that gave it
   * @param to id of the place that took it; {@link #BEYOND} and {@link #OUTSIDE} are no places of
   *     the drawing
   * @param volume (m³)
   * @param salt carried (kg)
   */
  public record Entry(String path, Way way, String from, String to, double volume, double salt) {}

  /** How water went. */
  public enum Way {
    RUN,
    WEIR,
    RIM,
    SILL,
    LEAK,
    PARTED,
    THROWN,
    POURED,
    TAKEN,
    BURST,
    HELD_BY_DEVICE
  }

  /** Water that stands in a run or device (m³). */
  public record Standing(String id, double before, double after) {}

  /** Where water goes that leaves the drawing over a last sill. */
  public static final String BEYOND = "beyond";

  /** Where water comes from that a person pours in, and goes that a person takes out. */
  public static final String OUTSIDE = "outside";
}
