package dryfloor.analysis.reference;

/**
 * A difference that is larger than the tolerance of a row, and understood. It is held on both
 * sides, so that it can neither grow nor vanish unseen.
 *
 * @param relative what the laws give over what the source says, less 1
 * @param within how exactly that is known
 * @param because why they differ
 */
record KnownDifference(double relative, double within, String because) {

  boolean explains(double relativeDifference) {
    return Math.abs(relativeDifference - relative) <= within;
  }
}
