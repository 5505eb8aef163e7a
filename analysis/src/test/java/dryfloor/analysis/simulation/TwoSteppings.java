package dryfloor.analysis.simulation;

import dryfloor.analysis.outcome.Outcome;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * One failure, taken through time twice from the same start with the same equations.
 *
 * @param until up to when it was followed, if nothing came to rest before (s)
 * @param toTheEnd whether that is the end of the unattended time, and not before
 * @param level the greatest difference of a final level (m, third view minus engine)
 * @param water the difference of water that reached a floor, a drain or beyond or came from a
 *     supply that is greatest beside what is allowed (m³)
 */
record TwoSteppings(
    String scenario,
    String failure,
    double until,
    boolean toTheEnd,
    Difference level,
    Difference water) {

  /** Final levels agree to this (m). */
  private static final double LEVEL = 1e-4;

  /** Water agrees to this share of itself, or to {@link #DROP}. */
  private static final double SHARE = 1e-3;

  /**
   * A drop, and what each of the two legs of a run may lack when it is left at rest: one stepping
   * leaves it there at the very moment it is near enough, the other at the end of a step, nearer.
   */
  private static final double DROP = 1e-6 + 2 * Columns.THERE;

  /** A difference, where it is, and how much of what is allowed it is. */
  record Difference(String where, double third, double engine, double shareOfAllowed) {

    /** Third view minus engine. */
    double value() {
      return third - engine;
    }
  }

  static TwoSteppings of(
      String scenario,
      String failure,
      double until,
      boolean toTheEnd,
      Outcome engine,
      Outcome third) {
    List<Difference> levels = new ArrayList<>();
    List<Difference> waters = new ArrayList<>();
    for (int i = 0; i < engine.vessels().size(); i++) {
      Outcome.VesselOutcome vessel = engine.vessels().get(i);
      levels.add(level(vessel.id(), vessel.levelAfter(), third.vessels().get(i).levelAfter()));
    }
    for (int i = 0; i < engine.floors().size(); i++) {
      Outcome.FloorOutcome floor = engine.floors().get(i);
      levels.add(level(floor.id(), floor.depth(), third.floors().get(i).depth()));
      waters.add(water(floor.id(), floor.received(), third.floors().get(i).received()));
    }
    addPassed(waters, engine.drained(), third.drained());
    addPassed(waters, engine.supplied(), third.supplied());
    waters.add(water("beyond", engine.beyond(), third.beyond()));
    return new TwoSteppings(scenario, failure, until, toTheEnd, worst(levels), worst(waters));
  }

  private static void addPassed(
      List<Difference> waters, List<Outcome.Passed> engine, List<Outcome.Passed> third) {
    for (int i = 0; i < engine.size(); i++) {
      waters.add(water(engine.get(i).id(), engine.get(i).volume(), third.get(i).volume()));
    }
  }

  static Difference level(String where, double engine, double third) {
    return new Difference(where, third, engine, Math.abs(third - engine) / LEVEL);
  }

  static Difference water(String where, double engine, double third) {
    double allowed = Math.max(SHARE * Math.max(engine, third), DROP);
    return new Difference(where, third, engine, Math.abs(third - engine) / allowed);
  }

  private static Difference worst(List<Difference> differences) {
    return differences.stream()
        .max(Comparator.comparingDouble(Difference::shareOfAllowed))
        .orElseThrow();
  }

  boolean agrees() {
    return level.shareOfAllowed() <= 1 && water.shareOfAllowed() <= 1;
  }
}
