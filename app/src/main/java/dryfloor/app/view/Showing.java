package dryfloor.app.view;

import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.failure.FailureTraits;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.app.drawing.BuildingPicture;
import dryfloor.app.drawing.Plan;
import dryfloor.app.report.Answer;
import dryfloor.app.report.MovingScene;
import dryfloor.app.report.NoAnswerWords;
import dryfloor.app.report.Wording;
import dryfloor.app.view.work.Answers;
import dryfloor.model.Installation;
import dryfloor.model.unit.Units;
import java.util.List;
import java.util.Optional;

/**
 * What is shown of one failure: its course, and the picture in which it moves. Made once for each
 * failure; only the moment changes after that.
 *
 * @param film the failure's course; that of normal operation where it has none
 * @param word of the verdict
 * @param silence why there is no course, where there is none
 */
record Showing(MovingScene film, BuildingPicture building, Answer word, Optional<Silence> silence) {

  /** A failure without a course, and why it has none. */
  record Silence(String title, String reason) {}

  /** Shows an answer, or normal operation where nothing is chosen. */
  static Showing of(Answers.Known known, Optional<FailureResult> chosen, Units units) {
    Installation drawing = known.installation();
    Wording wording = Wording.of(drawing, units);
    Outcome normal = known.sweep().normal();
    return chosen
        .map(
            result ->
                switch (result) {
                  case FailureResult.Answered answered ->
                      showing(
                          wording, name(result, drawing), components(result), answered.outcome());
                  case FailureResult.Unanswered unanswered ->
                      silent(
                          wording,
                          normal,
                          result,
                          new NoAnswerWords(wording).whole(unanswered.reason()));
                  case FailureResult.Skipped skipped ->
                      silent(wording, normal, result, Words.of("story.skipped", skipped.reason()));
                })
        .orElseGet(() -> showing(wording, Words.of("list.normal"), List.of(), normal));
  }

  private static String name(FailureResult result, Installation drawing) {
    return FailureNames.name(result.failure(), drawing);
  }

  private static List<String> components(FailureResult result) {
    return FailureTraits.components(result.failure());
  }

  private static Showing showing(
      Wording wording, String title, List<String> failed, Outcome outcome) {
    MovingScene film = MovingScene.of(wording, title, failed, outcome);
    return new Showing(film, picture(film), Answer.of(outcome), Optional.empty());
  }

  /** What failed is marked, in the picture of normal operation. */
  private static Showing silent(
      Wording wording, Outcome normal, FailureResult result, String reason) {
    String title = name(result, wording.installation());
    MovingScene film = MovingScene.of(wording, title, components(result), normal);
    return new Showing(
        film, picture(film), Answer.of(result), Optional.of(new Silence(title, reason)));
  }

  private static BuildingPicture picture(MovingScene film) {
    return BuildingPicture.of(Plan.of(film.wording().installation()), film.end());
  }
}
