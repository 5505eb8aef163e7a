package dryfloor.app.report;

import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.sweep.FailureResult;

/**
 * A failure as a list shows it.
 *
 * @param id of the failure
 * @param answer what it comes to
 * @param name of the failure
 * @param where the water ended up; or why there is no answer
 * @param margin how close the fullest vessel came to its rim; empty where nothing is known
 */
public record ListedFailure(String id, Answer answer, String name, String where, String margin) {

  /** The line of a result; its margin is told against that of normal operation. */
  public static ListedFailure of(Wording wording, FailureResult result, Outcome normal) {
    String id = FailureNames.id(result.failure());
    String name = FailureNames.name(result.failure(), wording.installation());
    return switch (result) {
      case FailureResult.Answered answered ->
          new ListedFailure(
              id,
              Answer.of(result),
              name,
              Whereabouts.of(wording, answered.outcome()),
              Whereabouts.margin(wording, answered.outcome(), normal));
      case FailureResult.Unanswered unanswered ->
          new ListedFailure(
              id,
              Answer.of(result),
              name,
              new NoAnswerWords(wording).reason(unanswered.reason()),
              "");
      case FailureResult.Skipped skipped ->
          new ListedFailure(id, Answer.of(result), name, skipped.reason(), "");
    };
  }
}
