package dryfloor.analysis.rehearsal;

import java.util.Optional;

/** Something that is otherwise than drawn and may explain measured levels. Ids of the drawing. */
public sealed interface Cause {

  /** All is as drawn, and the difference has to be lived with or explained otherwise. */
  record AsDrawn() implements Cause {}

  record CheckValveWorn(String checkValve) implements Cause {}

  record CheckValveOpen(String checkValve) implements Cause {}

  record SiphonBreakBlocked(String siphonBreak) implements Cause {}

  /** A siphon break sits lower (m) than drawn. */
  record SiphonBreakLower(String siphonBreak, double by) implements Cause {}

  /** Rock and the like take this share of the vessel's water more than drawn. */
  record MoreDisplaced(String vessel, double share) implements Cause {}

  /** The vessel was filled higher than drawn (m), lower where negative. */
  record FilledOtherwise(String vessel, double by) implements Cause {}

  /** A pump runs at this many times its drawn speed. */
  record PumpStronger(String pump, double times) implements Cause {}

  /** A drain is half clogged. */
  record DrainHalfClogged(String run) implements Cause {}

  /**
   * How well a cause explains what was measured.
   *
   * @param misfit root mean square of what is left of the differences (m); none where there is no
   *     answer with this cause
   */
  record Ranked(Cause cause, Optional<Double> misfit) {}
}
