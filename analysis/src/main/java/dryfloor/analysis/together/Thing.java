package dryfloor.analysis.together;

/**
 * Something whose behaviour can change.
 *
 * @param id of the element; of pipes that meet, the first run by id
 */
record Thing(Kind kind, String id) {

  enum Kind {
    /** A vessel, floor or supply: what stands in it. */
    PLACE,
    /** Runs that meet at junctions, with all that sits in them. */
    PIPES,
    /** A weir. */
    WEIR,
    /** The rim of a vessel or the sill of a floor. */
    RIM,
    /** A circulation pump. */
    STIRRER,
    /** A timer. */
    TIMER
  }
}
