package dryfloor.analysis.generated;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.analysis.outcome.Outcome;

/** Where the water of two answers stands. */
final class Levels {

  /** What the project promises for a level (m). */
  static final double A_TENTH_OF_A_MILLIMETRE = 1e-4;

  private Levels() {}

  /**
   * Every vessel and floor of the one is as full as that of the other, and the same floors are wet.
   *
   * @param up by which the other's elevations are higher (m)
   */
  static void same(Outcome one, Outcome other, double up, double tolerance, String what) {
    asFull(one, other, up, tolerance, what);
    assertThat(other.verdict()).as("verdict after " + what).isEqualTo(one.verdict());
  }

  /** Every vessel and floor is as full later as it was. */
  static void stay(Outcome first, Outcome later, double tolerance, String what) {
    asFull(first, later, 0, tolerance, what);
  }

  private static void asFull(Outcome one, Outcome other, double up, double tolerance, String what) {
    for (int v = 0; v < one.vessels().size(); v++) {
      Outcome.VesselOutcome vessel = one.vessels().get(v);
      assertThat(other.vessels().get(v).levelAfter() - up)
          .as("level of '" + vessel.id() + "' after " + what)
          .isCloseTo(vessel.levelAfter(), within(tolerance));
    }
    for (int f = 0; f < one.floors().size(); f++) {
      Outcome.FloorOutcome floor = one.floors().get(f);
      assertThat(other.floors().get(f).depth())
          .as("depth on '" + floor.id() + "' after " + what)
          .isCloseTo(floor.depth(), within(tolerance));
    }
  }
}
