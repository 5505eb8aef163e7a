package dryfloor.analysis.simulation;

/**
 * Whether a pipe is full of water, or has air at its crest and what then stands in its two legs.
 */
final class PipeMode {

  /** What a leg of a pipe with air at its crest is doing. */
  enum Leg {
    /** Its water stands still and takes no part. */
    AT_REST,
    /** Its water rises or falls towards where it belongs. */
    MOVING,
    /** It is full to the crest, so that what enters it goes over. */
    BRIMFUL,
    /** It fills from above as a plug and lets nothing out until it is full. */
    FILLING
  }

  /** How often it may take air and fill again before it is followed on average. */
  private static final int FLUSHES = 12;

  boolean full;

  /** How often it has taken air, or began to fill in vain. */
  int breaks;

  final Leg[] legs = {Leg.AT_REST, Leg.AT_REST};

  /**
   * Whether it has filled and taken air so often that it is no longer followed through each of
   * these, but on average: it stays open and passes what arrives, up to what it can carry.
   */
  boolean staysOpen() {
    return breaks > FLUSHES;
  }
}
