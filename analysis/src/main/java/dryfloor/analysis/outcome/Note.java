package dryfloor.analysis.outcome;

/** A doubt or limit that goes with an answer. */
public sealed interface Note {

  /**
   * No published rule says whether this hole stops the siphon. Both branches were run, this is the
   * worse one.
   *
   * @param worked whether the hole worked in the branch that is told
   */
  record SiphonBreakInDoubt(String siphonBreak, boolean worked) implements Note {}

  /** The hole is far too small for its pipe and was taken as closed. */
  record SiphonBreakTooSmall(String siphonBreak) implements Note {}

  /**
   * The pressure in this run fell to that of vapour at one point, which limited the flow.
   *
   * @param along how far that is along the run (m)
   * @param elevation of the run there (m)
   */
  record AtVapourPressure(String run, double along, double elevation) implements Note {}

  /** This vessel could float in the water around it. */
  record MayFloat(String vessel) implements Note {}

  /** The level in normal operation differs from the declared one (m). */
  record SettlesElsewhere(String vessel, double declared, double settled) implements Note {}

  /**
   * This run fills and takes air again and again. It was followed through the first dozen of these,
   * then on average.
   */
  record FlushesOnAndOn(String run) implements Note {}
}
