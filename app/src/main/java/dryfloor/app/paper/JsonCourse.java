package dryfloor.app.paper;

import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.outcome.Trajectory;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.app.report.Answer;
import dryfloor.app.report.LevelCurve;
import dryfloor.app.report.Movement;
import dryfloor.app.report.Movements;
import dryfloor.app.report.TimeScale;
import dryfloor.app.report.Wording;
import java.util.List;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Levels over time and ways of the water for other programs, as they are drawn on the papers. */
final class JsonCourse {

  /** As many points as a screen can show beside each other. */
  private static final int SLOTS = 340;

  private static final double MM = 1000;
  private static final double LITRES = 1000;
  private static final double TENTHS = 10;
  private static final double THOUSANDTHS = 1000;

  private JsonCourse() {}

  static void put(ObjectNode into, Wording wording, FailureResult.Answered answered) {
    Outcome outcome = answered.outcome();
    into.put("id", FailureNames.id(answered.failure()));
    into.put("failure", FailureNames.name(answered.failure(), wording.installation()));
    into.put("answer", Answer.of(answered).name());
    ArrayNode curves = into.putArray("levels");
    for (Outcome.VesselOutcome vessel : outcome.vessels()) {
      if (LevelPlot.swing(outcome, vessel) > CourseWords.MOVES) {
        curve(curves.addObject(), outcome.trajectory(), vessel);
      }
    }
    ArrayNode ways = into.putArray("ways");
    Movements.of(outcome.ledger()).stream()
        .filter(movement -> wording.amounts().isWorthTelling(movement.moved()))
        .forEach(movement -> way(ways.addObject(), movement));
  }

  /** Two lists of one length: moments, and the level above the vessel's inside bottom at each. */
  private static void curve(ObjectNode into, Trajectory trajectory, Outcome.VesselOutcome vessel) {
    TimeScale scale = new TimeScale(Math.max(1, trajectory.time(trajectory.moments() - 1)));
    List<LevelCurve.Spot> spots = LevelCurve.of(trajectory, vessel.id(), scale, SLOTS);
    into.put("vessel", vessel.id());
    into.put("rim_mm", rounded((vessel.rim() - vessel.bottom()) * MM, TENTHS));
    ArrayNode times = into.putArray("time_s");
    ArrayNode levels = into.putArray("level_mm");
    for (LevelCurve.Spot spot : spots) {
      times.add(rounded(scale.time(spot.share()), THOUSANDTHS));
      levels.add(rounded((spot.level() - vessel.bottom()) * MM, TENTHS));
    }
  }

  private static void way(ObjectNode into, Movement movement) {
    into.put("from", movement.from())
        .put("to", movement.to())
        .put("path", movement.path())
        .put("way", movement.way().name())
        .put("water_L", rounded(movement.moved() * LITRES, THOUSANDTHS))
        .put("roundAndRound_L", rounded(movement.round() * LITRES, THOUSANDTHS));
  }

  private static double rounded(double value, double parts) {
    return Math.round(value * parts) / parts;
  }
}
