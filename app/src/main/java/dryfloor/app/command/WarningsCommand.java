package dryfloor.app.command;

import dryfloor.analysis.practice.Warning;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.app.report.CareSection;
import dryfloor.app.report.JsonAnswer;
import dryfloor.app.report.ProblemReport;
import dryfloor.app.report.WarningsReport;
import dryfloor.app.report.Wording;
import dryfloor.model.Installation;
import dryfloor.model.file.Problem;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Holds a drawing against published rules and common practice. */
@Command(
    name = "warnings",
    description = "Tell what published rules and common practice have against a drawing.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Exit codes: 0 whatever is told, 2 the drawing is wrong.",
      "",
      "Example:",
      "  dryfloor warnings shop.json"
    })
public final class WarningsCommand implements Callable<Integer> {

  private final Workplace workplace;

  @Parameters(index = "0", paramLabel = "FILE", description = "The drawing.")
  private Path file = Path.of("");

  @Mixin private AnswerOptions options = new AnswerOptions();

  @Option(names = "--json", description = "Write the answer as JSON for other programs.")
  private boolean json;

  /** A command at this workplace. */
  public WarningsCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() {
    return answer().number();
  }

  private ExitCode answer() {
    return switch (workplace.drawings().load(file)) {
      case Loaded.Refused refused -> refuse(refused.problems());
      case Loaded.Drawing drawing -> answer(options.asked(drawing.installation()));
    };
  }

  private ExitCode answer(Installation installation) {
    try {
      tell(workplace.analyst().warnings(installation), options.wording(installation));
      return ExitCode.FLOOR_DRY;
    } catch (BaselineProblem problem) {
      return refuse(List.of(BaselineComplaint.of(installation, problem)));
    }
  }

  private void tell(List<Warning> warnings, Wording wording) {
    Surface surface = workplace.surface();
    if (json) {
      JsonAnswer answer = new JsonAnswer("warnings");
      answer.warned(file, wording, warnings);
      surface.answer(answer.text());
    } else {
      surface.answer(WarningsReport.of(warnings, wording, surface.ink()));
      surface.answer(CareSection.of(List.of(wording), surface.ink()));
    }
  }

  private ExitCode refuse(List<Problem> problems) {
    if (json) {
      JsonAnswer answer = new JsonAnswer("warnings");
      answer.rejected(file, problems);
      workplace.surface().answer(answer.text());
    }
    Surface surface = workplace.surface();
    surface.complain(ProblemReport.of(file, problems, surface.errInk()));
    return ExitCode.BAD_INPUT;
  }
}
