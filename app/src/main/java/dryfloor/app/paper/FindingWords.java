package dryfloor.app.paper;

import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.failure.FailureTraits;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.app.drawing.Elevation;
import dryfloor.app.drawing.Scene;
import dryfloor.app.report.Answer;
import dryfloor.app.report.NoAnswerWords;
import dryfloor.app.report.SceneWords;
import dryfloor.app.report.Sentences;
import dryfloor.app.report.VerdictSentence;
import dryfloor.app.report.Wording;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What one failure comes to, in words and as a picture. */
final class FindingWords {

  /** Nobody can act sooner than this (s). */
  private static final double AT_ONCE = 1;

  private FindingWords() {}

  static Report.Finding of(Wording wording, FailureResult result) {
    Answer answer = Answer.of(result);
    return new Report.Finding(
        kind(answer),
        answer.sign(true) + " " + answer.word(),
        FailureNames.name(result.failure(), wording.installation()),
        sentence(wording, result),
        outcome(result).map(found -> time(wording, found)).orElse(""));
  }

  private static String kind(Answer answer) {
    return answer.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  static String sentence(Wording wording, FailureResult result) {
    return switch (result) {
      case FailureResult.Answered answered ->
          Sentences.capital(new VerdictSentence(wording).explanation(answered.outcome()));
      case FailureResult.Unanswered unanswered ->
          "There is no answer, which never counts as dry: "
              + new NoAnswerWords(wording).reason(unanswered.reason());
      case FailureResult.Skipped skipped -> "Switched off in the drawing: " + skipped.reason();
    };
  }

  /** How long there is until a floor gets wet; nothing where none does. */
  private static String time(Wording wording, Outcome outcome) {
    return outcome.firstWetFloor().stream()
        .mapToObj(
            first ->
                first < AT_ONCE
                    ? "none: the floor gets wet at once"
                    : wording.amounts().time(first) + " until the first floor gets wet")
        .findFirst()
        .orElse("");
  }

  /** A part may fail unseen, but the water that it lets out on a floor does not stay so. */
  static String seen(Wording wording, FailureResult result) {
    String sign = FailureTraits.howNoticed(result.failure(), wording.installation());
    return FailureTraits.isHidden(result.failure(), wording.installation())
        ? outcome(result).stream()
            .flatMap(outcome -> outcome.floors().stream())
            .filter(floor -> floor.firstWet().isPresent())
            .min(Comparator.comparingDouble(floor -> floor.firstWet().orElseThrow()))
            .map(floor -> "nothing, until water stands on " + wording.names().the(floor.id()))
            .orElse(sign)
        : sign;
  }

  static Optional<Outcome> outcome(FailureResult result) {
    return switch (result) {
      case FailureResult.Answered answered -> Optional.of(answered.outcome());
      case FailureResult.Unanswered unanswered -> Optional.empty();
      case FailureResult.Skipped skipped -> Optional.empty();
    };
  }

  /** Those that have an answer, worst first. */
  static Stream<FailureResult.Answered> answered(SweepResult sweep) {
    return sweep.worstFirst().stream()
        .filter(FailureResult.Answered.class::isInstance)
        .map(FailureResult.Answered.class::cast);
  }

  /** The building before and after, by the code of the command that draws. */
  static Picture picture(Wording wording, FailureResult.Answered result, String name) {
    List<String> failed = FailureTraits.components(result.failure());
    String title = FailureNames.name(result.failure(), wording.installation());
    Scene scene = SceneWords.of(wording, title, failed, result.outcome());
    return Picture.drawn(high -> Elevation.onAPage(wording.installation(), scene, high), name);
  }
}
