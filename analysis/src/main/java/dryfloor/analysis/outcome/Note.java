package dryfloor.analysis.outcome;

import java.util.List;

/** A doubt or limit that goes with an answer. */
public sealed interface Note {

  /** Whether two courses were run of which nobody knows which it will be, and one is told. */
  default boolean isDoubt() {
    return this instanceof SiphonBreakInDoubt
        || this instanceof PrimingInDoubt
        || this instanceof DripInDoubt;
  }

  /**
   * No published rule says whether this hole stops the siphon. Both branches were run, this is the
   * worse one.
   *
   * @param worked whether the hole worked in the branch that is told
   */
  record SiphonBreakInDoubt(String siphonBreak, boolean worked) implements Note {}

  /**
   * It is in doubt whether a run fills into which water falls over a lip; both courses were run and
   * the worse one is told.
   *
   * @param filled whether it fills in the course that is told
   */
  record PrimingInDoubt(String run, boolean filled) implements Note {}

  /**
   * It is in doubt whether this drain runs full where it leaks, so that its hole draws air and
   * nothing drips; both courses were run and the worse one is told.
   *
   * @param drips whether it drips in the course that is told
   */
  record DripInDoubt(String run, boolean drips) implements Note {}

  /** The hole is far too small for its pipe and was taken as closed. */
  record SiphonBreakTooSmall(String siphonBreak) implements Note {}

  /**
   * The pressure in this run fell to that of vapour at one point, which limited the flow.
   *
   * @param along how far that is along the run (m)
   * @param elevation of the run there (m)
   */
  record AtVapourPressure(String run, double along, double elevation) implements Note {}

  /**
   * When their feed stopped these runs ran partly full, and what was on its way in them is not in
   * the levels: they count what stands in a run, not what runs in it with air above.
   *
   * @param vessel that they run into
   * @param volume on its way, by Manning's formula (m³)
   * @param rise of that vessel's final level if it is added (m)
   * @param left below its rim at its highest level (m)
   */
  record RunPartlyFull(List<String> runs, String vessel, double volume, double rise, double left)
      implements Note {

    public RunPartlyFull {
      runs = List.copyOf(runs);
    }
  }

  /**
   * What failed is a run that is called for by a level that never fell, as evaporation is left out:
   * nothing shows.
   *
   * @param landing id of the place its water goes to once it runs
   */
  record NeverRan(String run, String landing) implements Note {}

  /** This vessel could float in the water around it. */
  record MayFloat(String vessel) implements Note {}

  /** The level in normal operation differs from the declared one (m). */
  record SettlesElsewhere(String vessel, double declared, double settled) implements Note {}

  /**
   * This pump, which nothing stops, moves no water when all is well.
   *
   * @param sucksAir whether it runs dry; if not, it lifts no water to where it should
   */
  record IdlePump(String pump, boolean sucksAir) implements Note {}

  /** This emergency drain carries so much (m³/s) when all is well, though it should be dry. */
  record EmergencyDrainRuns(String run, double flow) implements Note {}

  /**
   * This run fills and takes air again and again. It was followed through the first dozen of these,
   * then on average.
   */
  record FlushesOnAndOn(String run) implements Note {}

  /**
   * This run drips although it is only partly full: how deep water runs over a small hole there,
   * and so how much drips, no law says.
   */
  record DripsWhilePartlyFull(String run) implements Note {}
}
