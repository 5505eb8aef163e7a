package dryfloor.app.command;

import dryfloor.app.report.ProblemReport;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Opens a drawing in a window. */
@Command(
    name = "view",
    description = "Open a drawing in a window: see where the water ends up.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Examples:",
      "  dryfloor view shop.json",
      "  dryfloor view               the drawing that was open last; at first an example"
    })
public final class ViewCommand implements Callable<Integer> {

  private final Workplace workplace;
  private final Consumer<Optional<Path>> window;

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "FILE",
      description = "The drawing. Default: the one that was open last.")
  private Optional<Path> file = Optional.empty();

  /**
   * A command at this workplace.
   *
   * @param window opens a window for a file or what was open last; comes back when it is closed
   */
  public ViewCommand(Workplace workplace, Consumer<Optional<Path>> window) {
    this.workplace = workplace;
    this.window = window;
  }

  @Override
  public Integer call() {
    return file.map(this::open)
        .orElseGet(
            () -> {
              window.accept(Optional.empty());
              return ExitCode.FLOOR_DRY;
            })
        .number();
  }

  /** A terminal is the better place to read what is wrong with a file, so it is read here first. */
  private ExitCode open(Path drawing) {
    return switch (workplace.drawings().load(drawing)) {
      case Loaded.Drawing sound -> {
        window.accept(Optional.of(drawing));
        yield ExitCode.FLOOR_DRY;
      }
      case Loaded.Refused refused -> {
        Surface surface = workplace.surface();
        surface.complain(ProblemReport.of(drawing, refused.problems(), surface.errInk()));
        yield ExitCode.BAD_INPUT;
      }
    };
  }
}
