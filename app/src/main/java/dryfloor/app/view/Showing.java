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

  /** What is told, before it is drawn. */
  private record Told(MovingScene film, Answer word, Optional<Silence> silence) {}

  /** Shows an answer, or normal operation where nothing is chosen. */
  static Showing of(Answers.Known known, Optional<FailureResult> chosen, Looks looks) {
    Wording wording = Wording.of(known.installation(), looks.units().get());
    Outcome normal = known.sweep().normal();
    Told told =
        chosen.map(result -> tell(wording, normal, result)).orElseGet(() -> calm(wording, normal));
    BuildingPicture building =
        BuildingPicture.of(Plan.of(known.installation()), told.film().end(), looks.enlargement());
    return new Showing(told.film(), building, told.word(), told.silence());
  }

  private static Told tell(Wording wording, Outcome normal, FailureResult result) {
    List<String> failed = FailureTraits.components(result.failure());
    String title = FailureNames.name(result.failure(), wording.installation());
    return switch (result) {
      case FailureResult.Answered answered -> tell(wording, title, failed, answered.outcome());
      case FailureResult.Unanswered unanswered ->
          silent(
              MovingScene.ofNormal(wording, title, failed, normal),
              result,
              new Silence(title, new NoAnswerWords(wording).whole(unanswered.reason())));
      case FailureResult.Skipped skipped ->
          silent(
              MovingScene.ofNormal(wording, title, failed, normal),
              result,
              new Silence(title, Words.of("story.skipped", skipped.reason())));
    };
  }

  private static Told tell(Wording wording, String title, List<String> failed, Outcome outcome) {
    MovingScene film = MovingScene.of(wording, title, failed, outcome);
    return new Told(film, Answer.of(outcome), Optional.empty());
  }

  private static Told calm(Wording wording, Outcome normal) {
    MovingScene film = MovingScene.ofNormal(wording, Words.of("list.normal"), List.of(), normal);
    return new Told(film, Answer.of(normal), Optional.empty());
  }

  /** What failed is marked, in the picture of normal operation. */
  private static Told silent(MovingScene normal, FailureResult result, Silence silence) {
    return new Told(normal, Answer.of(result), Optional.of(silence));
  }
}
