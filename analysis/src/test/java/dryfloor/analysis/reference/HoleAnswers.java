package dryfloor.analysis.reference;

import dryfloor.analysis.hydraulics.Orifice;

/** What {@link Orifice} says. */
final class HoleAnswers {

  /** Kinds of hole, each with the coefficient that the laws take for it. */
  private enum Hole {
    SHARP(Orifice.SHARP),
    SHORT_TUBE(Orifice.SHORT_TUBE),
    RE_ENTRANT(Orifice.RE_ENTRANT);

    private final double coefficient;

    Hole(double coefficient) {
      this.coefficient = coefficient;
    }
  }

  private HoleAnswers() {}

  static double flow(Given given) {
    return Orifice.flow(
        given.number("coefficient"), given.number("area_m2"), given.number("head_m"));
  }

  static double velocity(Given given) {
    return Orifice.flow(1.0, 1.0, given.number("head_m"));
  }

  static double coefficient(Given given) {
    return given.oneOf(Hole.class, "hole").coefficient;
  }
}
