package dryfloor.app.view.lesson;

import dryfloor.analysis.failure.FailureTraits;
import dryfloor.app.drawing.Scene;
import dryfloor.app.drawing.Style;
import dryfloor.app.report.Amounts;
import dryfloor.app.report.MovingScene;
import dryfloor.app.report.Wording;
import dryfloor.app.view.Words;
import dryfloor.app.view.learn.Exercise;
import dryfloor.model.unit.Units;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The scenes of an exercise: the truth, and what may be shown of it before the guess. */
final class GuessScene {

  /** A level that has moved less is not marked (m). */
  private static final double LOOKS_THE_SAME = 5e-4;

  private final Exercise exercise;
  private final Wording wording;
  private final MovingScene film;
  private final Scene truth;

  GuessScene(Exercise exercise, Units units) {
    this.exercise = exercise;
    wording = Wording.of(exercise.drawing(), units);
    film = MovingScene.of(wording, exercise.question(), failed(), exercise.outcome());
    truth = film.end();
  }

  private List<String> failed() {
    return FailureTraits.components(exercise.failure());
  }

  Scene truth() {
    return truth;
  }

  /** The truth at a moment (s after the failure). */
  Scene at(double moment) {
    return film.at(moment);
  }

  /** Nothing but the building, its levels in normal operation and the levels that are expected. */
  Scene expected(Map<String, Double> levels) {
    Map<String, Scene.Water> waters = new HashMap<>();
    truth.waters().forEach((id, water) -> waters.put(id, expected(id, water, levels)));
    return new Scene(
        truth.title(),
        truth.subtitle(),
        "?",
        Style.UNKNOWN_TEXT,
        "",
        waters,
        Map.of(),
        List.of(),
        Map.of(),
        Set.copyOf(truth.failed()),
        List.of(),
        List.of(),
        truth.heights(),
        truth.closing());
  }

  private Scene.Water expected(String id, Scene.Water water, Map<String, Double> levels) {
    double level = levels.getOrDefault(id, water.before());
    String note =
        Math.abs(level - water.before()) > LOOKS_THE_SAME
            ? Words.of("learn.mark", wording.amounts().levelChange(level - water.before()))
            : "";
    return new Scene.Water(water.before(), level, water.name(), note);
  }

  /** Heights as they are told. */
  Amounts amounts() {
    return wording.amounts();
  }

  /** What levels are read on. */
  Yardstick yardstick() {
    return Yardstick.of(wording.amounts().units());
  }

  String name(String id) {
    return wording.names().label(id);
  }
}
