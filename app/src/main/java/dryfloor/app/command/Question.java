package dryfloor.app.command;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.app.report.ProblemReport;
import dryfloor.model.Installation;
import dryfloor.model.file.Problem;
import java.nio.file.Path;
import java.util.List;

/** A question about one failure of one file, or about normal operation. */
final class Question {

  /** The word for asking about normal operation instead of a failure. */
  static final String NORMAL = "normal";

  private final Workplace workplace;

  Question(Workplace workplace) {
    this.workplace = workplace;
  }

  /** What came of asking. */
  sealed interface Reply {

    /** Normal operation. */
    record Normal(Installation installation, Outcome outcome) implements Reply {}

    /** A failure. */
    record Failed(Installation installation, FailureResult result) implements Reply {}

    /** The question can't be answered as it was asked. */
    record Refused(List<Problem> problems) implements Reply {
      public Refused {
        problems = List.copyOf(problems);
      }
    }
  }

  Reply ask(Path file, String failure, AnswerOptions options) {
    return switch (workplace.drawings().load(file)) {
      case Loaded.Refused refused -> new Reply.Refused(refused.problems());
      case Loaded.Drawing drawing -> ask(options.asked(drawing.installation()), failure);
    };
  }

  private Reply ask(Installation installation, String text) {
    try {
      if (text.equals(NORMAL)) {
        return new Reply.Normal(installation, workplace.analyst().normal(installation));
      }
      List<Failure> failures = workplace.analyst().failures(installation);
      return switch (new FailureSearch(failures, installation).find(text)) {
        case FailureSearch.Found.Meant meant ->
            new Reply.Failed(
                installation, workplace.analyst().answer(installation, meant.failure()));
        case FailureSearch.Found.Unclear unclear ->
            new Reply.Refused(List.of(new Problem(0, 0, "", unclear.complaint(), "")));
      };
    } catch (BaselineProblem problem) {
      return new Reply.Refused(List.of(BaselineComplaint.of(installation, problem)));
    }
  }

  ExitCode refuse(Path file, Reply.Refused refused) {
    Surface surface = workplace.surface();
    surface.complain(ProblemReport.of(file, refused.problems(), surface.errInk()));
    return ExitCode.BAD_INPUT;
  }

  static String title(FailureResult result, Installation installation) {
    return FailureNames.name(result.failure(), installation)
        + " ("
        + FailureNames.id(result.failure())
        + ")";
  }
}
