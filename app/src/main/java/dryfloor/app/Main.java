package dryfloor.app;

import dryfloor.app.command.CommandLines;
import dryfloor.app.command.SweepAnalyst;
import dryfloor.app.command.Terminal;
import dryfloor.app.command.Workplace;
import dryfloor.model.file.InstallationFile;

/** Starts the program. */
public final class Main {

  private Main() {}

  /** Runs one command and ends with its exit code. */
  public static void main(String[] arguments) {
    Workplace workplace =
        new Workplace(
            InstallationFile::read,
            new SweepAnalyst(),
            Terminal.surface(System.out, System.err, System.getenv()));
    int code = CommandLines.at(workplace, System.getenv()).execute(arguments);
    workplace.surface().out().flush();
    workplace.surface().err().flush();
    System.exit(code);
  }
}
