package dryfloor.app.command;

import dryfloor.app.report.ProblemReport;
import dryfloor.model.Installation;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Opens a drawing in a window. */
@Command(
    name = "view",
    description = "Open a drawing in a window: see where the water ends up.",
    mixinStandardHelpOptions = true,
    footer = {"", "Example:", "  dryfloor view shop.json"})
public final class ViewCommand implements Callable<Integer> {

  private final Workplace workplace;
  private final Consumer<Installation> window;

  @Parameters(index = "0", paramLabel = "FILE", description = "The drawing.")
  private Path file = Path.of("");

  /**
   * A command at this workplace.
   *
   * @param window opens a window and comes back when it is closed
   */
  public ViewCommand(Workplace workplace, Consumer<Installation> window) {
    this.workplace = workplace;
    this.window = window;
  }

  @Override
  public Integer call() {
    return switch (workplace.drawings().load(file)) {
      case Loaded.Drawing drawing -> {
        window.accept(drawing.installation());
        yield ExitCode.FLOOR_DRY.number();
      }
      case Loaded.Refused refused -> {
        Surface surface = workplace.surface();
        surface.complain(ProblemReport.of(file, refused.problems(), surface.errInk()));
        yield ExitCode.BAD_INPUT.number();
      }
    };
  }
}
