package dryfloor.app.command;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.app.report.ProblemReport;
import dryfloor.model.Installation;
import dryfloor.model.file.Problem;
import dryfloor.model.file.VisibleText;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** A question about one failure of one file, about several at once, or about normal operation. */
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
    record Failed(Installation installation, List<Failure> failures, FailureResult result)
        implements Reply {
      public Failed {
        failures = List.copyOf(failures);
      }
    }

    /** The question can't be answered as it was asked. */
    record Refused(List<Problem> problems) implements Reply {
      public Refused {
        problems = List.copyOf(problems);
      }
    }
  }

  Reply ask(Path file, List<String> failures, AnswerOptions options) {
    return switch (workplace.drawings().load(file)) {
      case Loaded.Refused refused -> new Reply.Refused(refused.problems());
      case Loaded.Drawing drawing -> ask(file, options.asked(drawing.installation()), failures);
    };
  }

  private Reply ask(Path file, Installation installation, List<String> texts) {
    try {
      if (texts.equals(List.of(NORMAL))) {
        return new Reply.Normal(installation, workplace.analyst().normal(installation));
      }
      FailureSearch search =
          new FailureSearch(workplace.analyst().failures(installation), installation);
      List<Failure> meant = new ArrayList<>();
      for (String text : texts) {
        switch (search.find(text)) {
          case FailureSearch.Found.Meant found -> {
            if (meant.contains(found.failure())) {
              return refused("'" + VisibleText.of(text) + "' is asked for twice", "name it once");
            }
            meant.add(found.failure());
          }
          case FailureSearch.Found.Unclear unclear -> {
            return text.equals(NORMAL)
                ? refused(
                    "'" + NORMAL + "' is asked for together with a failure",
                    "ask for one or the other")
                : refused(unclear.complaint(), "");
          }
        }
      }
      return new Reply.Failed(installation, meant, workplace.analyst().answer(installation, meant));
    } catch (BaselineProblem problem) {
      return new Reply.Refused(
          workplace.drawings().placed(file, BaselineComplaint.of(installation, problem)));
    }
  }

  private static Reply refused(String complaint, String remedy) {
    return new Reply.Refused(List.of(new Problem(0, 0, "", complaint, remedy)));
  }

  ExitCode refuse(Path file, Reply.Refused refused) {
    Surface surface = workplace.surface();
    surface.complain(ProblemReport.of(file, refused.problems(), surface.errInk()));
    return ExitCode.BAD_INPUT;
  }

  /** What all the failures are called, each with its id. */
  static String title(Reply.Failed failed) {
    return failed.failures().stream()
        .map(
            failure ->
                FailureNames.name(failure, failed.installation())
                    + " ("
                    + FailureNames.id(failure)
                    + ")")
        .collect(Collectors.joining(", and at once: "));
  }
}
