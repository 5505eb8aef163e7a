package dryfloor.analysis.worksheet;

/** How grave the effect of a failure is, from least to gravest. */
public enum Severity {
  /** Nothing leaves its vessel. */
  NO_EFFECT(1),
  /** Basins and drains take all that spills. */
  CAUGHT(2),
  /** A floor gets some water. */
  SOME_WATER(3),
  /** A floor gets more than can be mopped up. */
  WATER(4),
  /** A floor gets much water, or water that does not stop. */
  MUCH_WATER(5);

  private final int step;

  Severity(int step) {
    this.step = step;
  }

  /** Its place on the scale, from 1 to 5. */
  public int step() {
    return step;
  }
}
