package dryfloor.model.element;

/** Where a run begins or ends. */
public sealed interface RunEnd {

  /** Id of the vessel, floor, junction, supply or drain. */
  String at();

  /**
   * An opening in or over a vessel or floor.
   *
   * @param at id of the vessel or floor
   * @param elevation of the opening (m): where it takes air once the water falls to it, and where
   *     it pours out while the water is below
   */
  record Opening(String at, double elevation, Kind kind) implements RunEnd {

    /** How the opening looks. */
    public enum Kind {
      /** A hole or fitting through the wall or bottom. */
      PORT,
      /** The upright open end of a standpipe, whose lip is a weir. */
      STANDPIPE,
      /** A free end over or in the water, that can slip out. */
      FREE
    }
  }

  /** An end at a tee or manifold. */
  record AtJunction(String at) implements RunEnd {}

  /** An end at a supply. */
  record AtSupply(String at) implements RunEnd {}

  /** An end at a drain. */
  record AtDrain(String at) implements RunEnd {}
}
