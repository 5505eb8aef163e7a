package dryfloor.app;

import dryfloor.analysis.failure.EventFailures;
import dryfloor.app.command.CommandLines;
import dryfloor.app.command.SweepAnalyst;
import dryfloor.app.command.Terminal;
import dryfloor.app.command.Workplace;
import dryfloor.app.view.View;
import dryfloor.model.file.InstallationFile;

/** Starts the program. */
public final class Main {

  private Main() {}

  /** Runs one command and ends with its exit code, even where a thread beside this one breaks. */
  public static void main(String[] arguments) {
    Workplace workplace =
        new Workplace(
            file -> InstallationFile.read(file, EventFailures::check),
            new SweepAnalyst(),
            Terminal.surface(System.getenv()));
    CommandLines commandLines = new CommandLines(workplace, View::open, System.getenv());
    Thread.setDefaultUncaughtExceptionHandler(
        (thread, failure) -> Runtime.getRuntime().halt(commandLines.breakdown(failure)));
    System.exit(commandLines.run(arguments));
  }
}
