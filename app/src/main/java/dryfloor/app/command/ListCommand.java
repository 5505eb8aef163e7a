package dryfloor.app.command;

import dryfloor.app.report.FailureList;
import dryfloor.app.report.ProblemReport;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Lists the failures that a drawing can have, without answering them. */
@Command(
    name = "list",
    description = "List the failures that a drawing can have, with their ids.",
    mixinStandardHelpOptions = true,
    footer = {"", "Example:", "  dryfloor list shop.json"})
public final class ListCommand implements Callable<Integer> {

  private final Workplace workplace;

  @Parameters(index = "0", paramLabel = "FILE", description = "The drawing.")
  private Path file = Path.of("");

  /** A command at this workplace. */
  public ListCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() {
    Surface surface = workplace.surface();
    return switch (workplace.drawings().load(file)) {
      case Loaded.Refused refused -> {
        surface.complain(ProblemReport.of(file, refused.problems(), surface.errInk()));
        yield ExitCode.BAD_INPUT.number();
      }
      case Loaded.Drawing drawing -> {
        surface.answer(
            FailureList.of(
                drawing.installation(),
                workplace.analyst().failures(drawing.installation()),
                surface.ink()));
        yield ExitCode.FLOOR_DRY.number();
      }
    };
  }
}
