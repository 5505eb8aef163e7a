package dryfloor.app;

import dryfloor.analysis.failure.NamedFailures;
import dryfloor.app.command.CommandLines;
import dryfloor.app.command.SweepAnalyst;
import dryfloor.app.command.Terminal;
import dryfloor.app.command.Workplace;
import dryfloor.app.view.View;
import dryfloor.model.Installation;
import dryfloor.model.check.Finding;
import dryfloor.model.file.InstallationFile;
import dryfloor.model.file.Reading;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** Starts the program. */
public final class Main {

  private Main() {}

  private static Reading read(Path file, Function<Installation, List<Finding>> further) {
    return InstallationFile.read(
        file,
        installation ->
            Stream.concat(
                    NamedFailures.check(installation).stream(),
                    further.apply(installation).stream())
                .toList());
  }

  /** Runs one command and ends with its exit code, even where a thread beside this one breaks. */
  public static void main(String[] arguments) {
    Workplace workplace =
        new Workplace(Main::read, new SweepAnalyst(), Terminal.surface(System.getenv()));
    CommandLines commandLines = new CommandLines(workplace, View::open, System.getenv());
    Thread.setDefaultUncaughtExceptionHandler(
        (thread, failure) -> Runtime.getRuntime().halt(commandLines.breakdown(failure)));
    System.exit(commandLines.run(arguments));
  }
}
