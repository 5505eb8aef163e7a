package dryfloor.analysis.rehearsal;

import java.util.List;
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
   * @param misfit none where there is no answer with this cause
   */
  record Ranked(Cause cause, Optional<Misfit> misfit) {}

  /**
   * What is left of the differences with a cause, over all readings but those of vessels that are
   * dry on site and in the answer too.
   *
   * @param average (m)
   * @param most (m)
   */
  record Misfit(double average, double most) {

    /** Of what each reading is off by (m), whichever way. */
    static Misfit of(List<Double> off) {
      return new Misfit(
          off.stream().mapToDouble(Double::doubleValue).average().orElse(0),
          off.stream().mapToDouble(Double::doubleValue).max().orElse(0));
    }
  }
}
