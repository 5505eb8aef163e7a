package dryfloor.app.view;

import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.failure.FailureTraits;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.app.report.Answer;
import dryfloor.app.view.work.Answers;
import dryfloor.app.view.work.Work;
import dryfloor.model.Installation;
import java.util.List;
import java.util.Optional;

/**
 * What a window shows: an outcome and what it is called.
 *
 * @param id of the failure, or that of normal operation
 * @param failed ids of the components that failed
 * @param word of the verdict
 */
record Shown(
    Installation drawing,
    String id,
    String title,
    List<String> failed,
    Outcome outcome,
    String word) {

  private static final String NORMAL = "normal";

  Shown {
    failed = List.copyOf(failed);
  }

  /** The chosen failure if it has an outcome, else normal operation; nothing before the answers. */
  static Optional<Shown> of(Work work) {
    if (!(work.answers().get() instanceof Answers.Known known)) {
      return Optional.empty();
    }
    Installation drawing = known.installation();
    return Optional.of(
        work.chosenResult()
            .flatMap(result -> failed(drawing, result))
            .orElseGet(() -> normal(drawing, known.sweep().normal())));
  }

  private static Shown normal(Installation drawing, Outcome normal) {
    return new Shown(
        drawing, NORMAL, Words.of("list.normal"), List.of(), normal, Answer.of(normal).word());
  }

  private static Optional<Shown> failed(Installation drawing, FailureResult result) {
    return switch (result) {
      case FailureResult.Answered answered ->
          Optional.of(
              new Shown(
                  drawing,
                  FailureNames.id(answered.failure()),
                  FailureNames.name(answered.failure(), drawing),
                  FailureTraits.components(answered.failure()),
                  answered.outcome(),
                  Answer.of(answered.outcome()).word()));
      case FailureResult.Unanswered unanswered -> Optional.empty();
      case FailureResult.Skipped skipped -> Optional.empty();
    };
  }
}
