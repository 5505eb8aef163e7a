package dryfloor.analysis.rehearsal;

import java.util.OptionalDouble;

/**
 * A level that was read on site once all was still.
 *
 * @param vessel its id
 * @param before elevation before anything was switched off (m), where that was read as well
 * @param level elevation (m)
 */
public record MeasuredLevel(String vessel, OptionalDouble before, double level) {

  /** A vessel that was looked at only once all was still. */
  public static MeasuredLevel after(String vessel, double level) {
    return new MeasuredLevel(vessel, OptionalDouble.empty(), level);
  }
}
