package dryfloor.app.command;

import java.util.Map;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Puts the commands together and decides what becomes of mistakes. */
public final class CommandLines {

  /** Set in the environment, it shows where in the program an error arose. */
  private static final String TRACE = "DRYFLOOR_TRACE";

  private CommandLines() {}

  /** The whole command line at this workplace. */
  public static CommandLine at(Workplace workplace, Map<String, String> environment) {
    Surface surface = workplace.surface();
    return new CommandLine(new DryfloorCommand())
        .addSubcommand(new CheckCommand(workplace))
        .addSubcommand(new TellCommand(workplace))
        .addSubcommand(new ListCommand(workplace))
        .addSubcommand(new DrawCommand(workplace))
        .addSubcommand(new ValidateCommand(workplace))
        .addSubcommand(new NewCommand(workplace))
        .addSubcommand(new CompletionCommand(workplace))
        .setCaseInsensitiveEnumValuesAllowed(true)
        .setOut(surface.out())
        .setErr(surface.err())
        .setColorScheme(
            CommandLine.Help.defaultColorScheme(surface.ink().colour() ? Ansi.ON : Ansi.OFF))
        .setParameterExceptionHandler((mistake, arguments) -> usage(surface, mistake))
        .setExecutionExceptionHandler(
            (failure, line, result) -> unexpected(surface, failure, environment));
  }

  private static int usage(Surface surface, ParameterException mistake) {
    String message = String.valueOf(mistake.getMessage());
    surface.complain("dryfloor: " + surface.errInk().fit(message) + "\n");
    UnmatchedArgumentException.printSuggestions(mistake, surface.err());
    String command = mistake.getCommandLine().getCommandSpec().qualifiedName();
    surface.complain("'" + command + " --help' tells how to ask.\n");
    return ExitCode.BAD_INPUT.number();
  }

  private static int unexpected(
      Surface surface, Exception failure, Map<String, String> environment) {
    surface.complain(
        "dryfloor: no answer because of an error in the program: "
            + surface.errInk().fit(String.valueOf(failure.getMessage()))
            + "\nThe drawing may be sound. "
            + TRACE
            + "=1 shows where the error arose.\n");
    if (!environment.getOrDefault(TRACE, "").isEmpty()) {
      failure.printStackTrace(surface.err());
    }
    surface.err().flush();
    return ExitCode.NO_ANSWER.number();
  }
}
