package dryfloor.app.command;

import dryfloor.analysis.practice.Warning;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.app.report.WarningsReport;
import dryfloor.app.report.Wording;
import dryfloor.model.Installation;
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
    OneDrawing one = new OneDrawing(workplace, "warnings", file, json);
    return one.ask(options, installation -> answer(one, installation));
  }

  private ExitCode answer(OneDrawing one, Installation installation) throws BaselineProblem {
    List<Warning> warnings = workplace.analyst().warnings(installation);
    Wording wording = options.wording(installation);
    one.tell(
        wording,
        () -> WarningsReport.of(warnings, wording, workplace.surface().ink()),
        json -> json.warned(file, wording, warnings));
    return ExitCode.FLOOR_DRY;
  }
}
