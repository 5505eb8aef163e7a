package dryfloor.analysis.failure;

/** How far the water gets after a failure: what is worth doing against it depends on that. */
public enum Harm {
  /** Nothing leaves its vessel. */
  NOTHING_LEAVES,
  /** Basins and drains take what does. */
  CAUGHT,
  /** A floor gets wet, or nobody knows. */
  REACHES_A_FLOOR
}
