package dryfloor.app.command;

import dryfloor.analysis.sweep.FailureResult;
import dryfloor.app.report.Answer;
import dryfloor.app.report.Ink;
import dryfloor.app.report.JsonAnswer;
import dryfloor.app.report.TellReport;
import dryfloor.app.report.Wording;
import dryfloor.model.Installation;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
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
      "Exit codes: 0 every floor stays dry, 1 a floor gets wet, 2 the drawing is wrong",
      "or the failure is not known, 3 there is no answer.",
      "",
      "Examples:",
      "  dryfloor tell shop.json power-lost.building",
      "  dryfloor tell shop.json siphon-break-blocked --and power-lost.building",
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

  @Option(
      names = "--and",
      paramLabel = "FAILURE",
      description = "Another failure at the same moment; may be given again.")
  private List<String> others = List.of();

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
    return switch (question.ask(file, asked(), options)) {
      case Question.Reply.Refused refused -> refuse(question, refused);
      case Question.Reply.Normal normal -> tell(normal).number();
      case Question.Reply.Failed failed -> tell(failed).number();
    };
  }

  private List<String> asked() {
    return Stream.concat(Stream.of(failure), others.stream()).toList();
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

  private ExitCode tell(Question.Reply.Failed failed) {
    if (json) {
      write(failed.installation(), Optional.empty(), List.of(failed.result()));
    } else {
      workplace.surface().answer(text(failed));
    }
    return ExitCode.of(Answer.of(failed.result()));
  }

  private String text(Question.Reply.Failed failed) {
    String title = Question.title(failed);
    Wording wording = options.wording(failed.installation());
    Ink ink = workplace.surface().ink();
    return switch (failed.result()) {
      case FailureResult.Answered answered ->
          TellReport.of(title, answered.outcome(), wording, ink);
      case FailureResult.Unanswered unanswered ->
          TellReport.withoutAnswer(title, unanswered.reason(), wording, ink);
      case FailureResult.Skipped skipped ->
          TellReport.skipped(title, skipped.reason(), wording, ink);
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
