package dryfloor.app.command;

import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.app.report.CareSection;
import dryfloor.app.report.JsonAnswer;
import dryfloor.app.report.ProblemReport;
import dryfloor.app.report.Wording;
import dryfloor.model.Installation;
import dryfloor.model.file.Problem;
import dryfloor.model.file.UncertainDrawing;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * What commands about one drawing have in common: it is loaded or refused, and the answer is told
 * in words or as JSON.
 */
final class OneDrawing {

  private final Workplace workplace;
  private final String command;
  private final Path file;
  private final boolean json;

  /** What a command does with its drawing. */
  interface Asked {
    ExitCode answer(Installation installation) throws BaselineProblem;
  }

  /** What a command does with a drawing and with what is not known exactly about it. */
  interface AskedAboutDoubt {
    ExitCode answer(Installation installation, UncertainDrawing uncertain) throws BaselineProblem;
  }

  OneDrawing(Workplace workplace, String command, Path file, boolean json) {
    this.workplace = workplace;
    this.command = command;
    this.file = file;
    this.json = json;
  }

  /** Asks about the drawing. */
  int ask(AnswerOptions options, Asked asked) {
    return switch (workplace.drawings().load(file)) {
      case Loaded.Refused refused -> refuse(refused.problems()).number();
      case Loaded.Drawing drawing -> ask(options.asked(drawing.installation()), asked).number();
    };
  }

  /** Asks about the drawing and what is not known exactly, if there is anything that can fail. */
  int judge(AnswerOptions options, AskedAboutDoubt asked) {
    return switch (workplace.drawings().load(file)) {
      case Loaded.Refused refused -> refuse(refused.problems()).number();
      case Loaded.Drawing drawing ->
          ask(
                  options.asked(drawing.installation()),
                  ifAnythingCanFail(
                      installation -> asked.answer(installation, drawing.uncertain())))
              .number();
    };
  }

  /** Asks about the drawing if there is anything in it that can fail. */
  int judge(AnswerOptions options, Asked asked) {
    return ask(options, ifAnythingCanFail(asked));
  }

  private Asked ifAnythingCanFail(Asked asked) {
    return installation -> {
      Optional<Problem> nothing =
          NothingToJudge.of(installation, workplace.analyst().failures(installation));
      return nothing.isPresent() ? refuse(List.of(nothing.get())) : asked.answer(installation);
    };
  }

  private ExitCode ask(Installation installation, Asked asked) {
    try {
      return asked.answer(installation);
    } catch (BaselineProblem problem) {
      return refuse(workplace.drawings().placed(file, BaselineComplaint.of(installation, problem)));
    }
  }

  /** Shows how far the work on it is. */
  WatchedProgress progress() {
    return new WatchedProgress(String.valueOf(file.getFileName()), workplace.surface());
  }

  /** Tells the answer. */
  void tell(Wording wording, Supplier<String> words, Consumer<JsonAnswer> values) {
    Surface surface = workplace.surface();
    if (json) {
      JsonAnswer answer = new JsonAnswer(command);
      values.accept(answer);
      surface.answer(answer.text());
    } else {
      surface.answer(words.get());
      surface.answer(CareSection.of(List.of(wording), surface.ink()));
    }
  }

  /** Tells why the drawing can't be answered. */
  ExitCode refuse(List<Problem> problems) {
    Surface surface = workplace.surface();
    if (json) {
      JsonAnswer answer = new JsonAnswer(command);
      answer.rejected(file, problems);
      surface.answer(answer.text());
    }
    surface.complain(ProblemReport.of(file, problems, surface.errInk()));
    return ExitCode.BAD_INPUT;
  }
}
