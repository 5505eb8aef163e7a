package dryfloor.app.command;

import dryfloor.app.report.ProblemReport;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Checks drawings for mistakes without working anything out. */
@Command(
    name = "validate",
    description = "Check drawings for mistakes, every one at once.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Exit codes: 0 all are sound, 2 one is not.",
      "",
      "Example:",
      "  dryfloor validate shop.json"
    })
public final class ValidateCommand implements Callable<Integer> {

  private final Workplace workplace;

  @Parameters(arity = "1..*", paramLabel = "FILE|FOLDER", description = "Drawings to check.")
  private List<Path> files = List.of();

  /** A command at this workplace. */
  public ValidateCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() {
    ExitCode worst = ExitCode.FLOOR_DRY;
    for (Loaded loaded : workplace.drawings().loadAll(files)) {
      worst = worst.worse(say(loaded));
    }
    return worst.number();
  }

  private ExitCode say(Loaded loaded) {
    Surface surface = workplace.surface();
    return switch (loaded) {
      case Loaded.Refused refused -> {
        surface.complain(ProblemReport.of(refused.file(), refused.problems(), surface.errInk()));
        yield ExitCode.BAD_INPUT;
      }
      case Loaded.Drawing drawing -> {
        surface.answer(
            ProblemReport.sound(
                drawing.file(),
                drawing.installation().componentCount(),
                drawing.warnings(),
                surface.ink()));
        yield ExitCode.FLOOR_DRY;
      }
    };
  }
}
