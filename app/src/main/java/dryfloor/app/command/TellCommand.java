package dryfloor.app.command;

import dryfloor.analysis.sweep.FailureResult;
import dryfloor.app.report.Answer;
import dryfloor.app.report.JsonAnswer;
import dryfloor.app.report.TellReport;
import dryfloor.model.Installation;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tells one failure in full. */
@Command(
    name = "tell",
    description = "Tell one failure in full, or normal operation.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Exit codes: 0 every floor stays dry, 1 a floor gets wet, 2 the drawing is wrong or the",
      "failure is not known, 3 there is no answer.",
      "",
      "Examples:",
      "  dryfloor tell shop.json power-lost.building",
      "  dryfloor tell shop.json normal"
    })
public final class TellCommand implements Callable<Integer> {

  private final Workplace workplace;

  @Parameters(index = "0", paramLabel = "FILE", description = "The drawing.")
  private Path file = Path.of("");

  @Parameters(
      index = "1",
      paramLabel = "FAILURE",
      description = "Id of a failure or any part of it that fits only one; or 'normal'.")
  private String failure = Question.NORMAL;

  @Mixin private AnswerOptions options = new AnswerOptions();

  @Option(names = "--json", description = "Write the answer as JSON for other programs.")
  private boolean json;

  /** A command at this workplace. */
  public TellCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() {
    Question question = new Question(workplace);
    return switch (question.ask(file, failure, options)) {
      case Question.Reply.Refused refused -> refuse(question, refused);
      case Question.Reply.Normal normal -> tell(normal).number();
      case Question.Reply.Failed failed -> tell(failed.installation(), failed.result()).number();
    };
  }

  private int refuse(Question question, Question.Reply.Refused refused) {
    if (json) {
      JsonAnswer answer = new JsonAnswer("tell");
      answer.rejected(file, refused.problems());
      workplace.surface().answer(answer.text());
    }
    return question.refuse(file, refused).number();
  }

  private ExitCode tell(Question.Reply.Normal normal) {
    if (json) {
      write(normal.installation(), Optional.of(normal), List.of());
    } else {
      workplace
          .surface()
          .answer(
              TellReport.of(
                  "Normal operation",
                  normal.outcome(),
                  options.wording(normal.installation()),
                  workplace.surface().ink()));
    }
    return ExitCode.of(Answer.of(normal.outcome()));
  }

  private ExitCode tell(Installation installation, FailureResult result) {
    if (json) {
      write(installation, Optional.empty(), List.of(result));
    } else {
      workplace.surface().answer(text(installation, result));
    }
    return ExitCode.of(Answer.of(result));
  }

  private String text(Installation installation, FailureResult result) {
    String title = Question.title(result, installation);
    return switch (result) {
      case FailureResult.Answered answered ->
          TellReport.of(
              title, answered.outcome(), options.wording(installation), workplace.surface().ink());
      case FailureResult.Unanswered unanswered ->
          TellReport.withoutAnswer(
              title, unanswered.reason(), options.wording(installation), workplace.surface().ink());
      case FailureResult.Skipped skipped ->
          TellReport.skipped(
              title, skipped.reason(), options.wording(installation), workplace.surface().ink());
    };
  }

  private void write(
      Installation installation,
      Optional<Question.Reply.Normal> normal,
      List<FailureResult> results) {
    JsonAnswer answer = new JsonAnswer("tell");
    answer.answered(
        file, options.wording(installation), normal.map(Question.Reply.Normal::outcome), results);
    workplace.surface().answer(answer.text());
  }
}
