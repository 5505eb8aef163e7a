package dryfloor.analysis.network;

/**
 * Somewhere water can be.
 *
 * @param id of the element it belongs to
 * @param kind what it is
 * @param table level and volume; for the outside a table that is never read
 * @param head at which the outside stands (m): the supply's pressure line, a drain's inlet or
 *     surcharge level, and far below for beyond; not read for places with water of their own
 */
public record Place(String id, Kind kind, LevelTable table, double head) {

  /** What holds the water. */
  public enum Kind {
    VESSEL,
    BASIN,
    FLOOR,
    /** Water that stands in a run on one side of its crest. */
    COLUMN,
    /** A tee or manifold that has drained and stands open to the air. */
    TEE,
    /** Water that a device keeps while it runs. */
    DEVICE,
    SUPPLY,
    DRAIN,
    BEYOND,
    /** Where water comes from that a person pours in, and goes that a person takes out. */
    OUTSIDE;

    /** Whether somebody who walks round can see its level. */
    public boolean isShown() {
      return switch (this) {
        case VESSEL, BASIN, FLOOR -> true;
        case COLUMN, TEE, DEVICE, SUPPLY, DRAIN, BEYOND, OUTSIDE -> false;
      };
    }

    /** Whether it has a volume of its own, other than the endless outside. */
    public boolean isPool() {
      return switch (this) {
        case VESSEL, BASIN, FLOOR, COLUMN, TEE, DEVICE -> true;
        case SUPPLY, DRAIN, BEYOND, OUTSIDE -> false;
      };
    }
  }

  static Place pool(String id, Kind kind, LevelTable table) {
    return new Place(id, kind, table, Double.NaN);
  }

  static Place outside(String id, Kind kind, double head) {
    return new Place(id, kind, LevelTable.upright(0, 1), head);
  }
}
