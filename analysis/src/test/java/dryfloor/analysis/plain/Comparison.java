package dryfloor.analysis.plain;

import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.Verdict;
import dryfloor.model.Installation;
import dryfloor.model.element.Floor;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * One failure, answered twice.
 *
 * @param level the greatest difference of a final level (m, plain minus engine)
 * @param water the greatest difference of water that reached a floor or a drain or came from a
 *     supply (m³)
 */
record Comparison(
    String scenario,
    String failure,
    Verdict engine,
    Verdict plain,
    Difference level,
    Difference water) {

  /** What has left the drawing. */
  static final String BEYOND = "beyond";

  /** Levels agree to this (m). */
  static final double LEVEL = 0.5e-3;

  /** Water agrees to this share of itself. */
  static final double SHARE = 2e-3;

  /**
   * Film that the plain simulator leaves on wide floors and basins when it stops: some hundredths
   * of a millimetre that the engine lets run off to the last drop (m³).
   */
  static final double FILM = 1e-4;

  /**
   * A difference and where it is.
   *
   * @param beyond what exceeds the tolerance; negative where it agrees
   */
  record Difference(String where, double plain, double engine, double beyond) {

    /** Plain minus engine. */
    double value() {
      return plain - engine;
    }

    /** As a share of the larger of the two. */
    double share() {
      double larger = Math.max(Math.abs(plain), Math.abs(engine));
      return larger > 0 ? value() / larger : 0;
    }
  }

  static Comparison of(
      String scenario,
      String failure,
      Installation drawing,
      PlainSimulation plain,
      Outcome engine) {
    List<Difference> levels = new ArrayList<>();
    for (Outcome.VesselOutcome vessel : engine.vessels()) {
      if (!plain.house.isLost(vessel.id())) {
        levels.add(
            level(
                vessel.id(),
                plain.levelNearest(vessel.id(), vessel.levelAfter()),
                vessel.levelAfter()));
      }
    }
    List<Difference> waters = new ArrayList<>();
    for (Outcome.FloorOutcome outcome : engine.floors()) {
      Floor floor =
          drawing.floors().stream()
              .filter(f -> f.id().equals(outcome.id()))
              .findFirst()
              .orElseThrow();
      double level = floor.elevation() + outcome.depth();
      double depth = plain.levelNearest(floor.id(), level) - floor.elevation();
      levels.add(level(floor.id(), depth, outcome.depth()));
      waters.add(water(floor.id(), plain.answer.caughtBy(floor.id()), outcome.received()));
    }
    for (Outcome.Passed drain : engine.drained()) {
      waters.add(water(drain.id(), plain.answer.drained(drain.id()), drain.volume()));
    }
    for (Outcome.Passed supply : engine.supplied()) {
      waters.add(water(supply.id(), plain.answer.supplied(supply.id()), supply.volume()));
    }
    waters.add(water(BEYOND, plain.answer.beyond(), engine.beyond()));
    return new Comparison(
        scenario, failure, engine.verdict(), plain.answer.verdict(), worst(levels), worst(waters));
  }

  static Difference level(String where, double plain, double engine) {
    return new Difference(where, plain, engine, Math.abs(plain - engine) - LEVEL);
  }

  static Difference water(String where, double plain, double engine) {
    double allowed = SHARE * Math.max(Math.abs(plain), Math.abs(engine)) + FILM;
    return new Difference(where, plain, engine, Math.abs(plain - engine) - allowed);
  }

  private static Difference worst(List<Difference> differences) {
    boolean anyBeyond = differences.stream().anyMatch(difference -> difference.beyond() > 0);
    return differences.stream()
        .max(Comparator.comparingDouble(d -> anyBeyond ? d.beyond() : Math.abs(d.value())))
        .orElseThrow();
  }

  boolean agrees() {
    return engine == plain && level.beyond() <= 0 && water.beyond() <= 0;
  }
}
