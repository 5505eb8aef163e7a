package dryfloor.analysis.outcome;

/** Where the water went, from best to worst. */
public enum Verdict {
  /** Nothing left its vessels. */
  DRY,
  /** Basins and drains took all that spilled. */
  CAUGHT,
  /** A floor got water. */
  WET
}
