package dryfloor.app.drawing;

/**
 * A height of the drawing that can be taken hold of in the picture.
 *
 * @param kind what it sets
 * @param id of the vessel, weir, run or part that has it
 * @param number of the height within it: 0 for the first end of a run and 1 for its second, the
 *     place in the list for a waypoint, 0 otherwise
 * @param left where it begins across the building (m)
 * @param right where it ends (m); the same for a single point
 * @param elevation that it sets (m)
 * @param base elevation from which people count it (m)
 */
public record Handle(
    Kind kind, String id, int number, double left, double right, double elevation, double base) {

  /** What a handle sets. */
  public enum Kind {
    /** Water in normal operation. */
    LEVEL,
    /** Upper edge of a vessel. */
    RIM,
    /** Edge over which water passes to the next vessel. */
    WEIR,
    /** Holes of a siphon break. */
    SIPHON_BREAK,
    /** Lip of a standpipe. */
    LIP,
    /** Hole through a wall. */
    PORT,
    /** Free end of a pipe. */
    FREE_END,
    /** Crest or low point of a run. */
    WAYPOINT
  }

  /** Whether it is a line across a vessel rather than a point. */
  public boolean isLine() {
    return right > left;
  }

  /** Where people look for it: its middle (m). */
  public Point middle() {
    return new Point((left + right) / 2, elevation);
  }

  /** What it sets, as a height above its base (m). */
  public double height() {
    return elevation - base;
  }

  /** Whether another one, perhaps at another height, sets the same. */
  public boolean setsTheSameAs(Handle other) {
    return kind == other.kind && id.equals(other.id) && number == other.number;
  }
}
