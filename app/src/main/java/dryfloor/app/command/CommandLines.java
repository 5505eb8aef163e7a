package dryfloor.app.command;

import dryfloor.model.file.VisibleText;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Puts the commands together and decides what becomes of mistakes and breakdowns. */
public final class CommandLines {

  /** Set in the environment, it shows where in the program an error arose. */
  static final String TRACE = "DRYFLOOR_TRACE";

  private final Workplace workplace;
  private final Consumer<Optional<Path>> window;
  private final Surface surface;
  private final boolean traced;

  /**
   * The command line at this workplace.
   *
   * @param window opens a window for a file or what was open last; comes back when it is closed
   * @param environment variables that the user may have set
   */
  public CommandLines(
      Workplace workplace, Consumer<Optional<Path>> window, Map<String, String> environment) {
    this.workplace = workplace;
    this.window = window;
    this.surface = workplace.surface();
    this.traced = !environment.getOrDefault(TRACE, "").isEmpty();
  }

  /** Runs one command; the exit code, once all that it wrote has arrived or is known to be lost. */
  public int run(String... arguments) {
    int code = carryOut(arguments);
    Optional<String> failure = surface.out().failure();
    failure.ifPresent(this::complainOfLostOutput);
    return failure.isPresent() && code != ExitCode.BAD_INPUT.number()
        ? ExitCode.NO_ANSWER.number()
        : code;
  }

  private int carryOut(String... arguments) {
    try {
      return commandLine().execute(arguments);
    } catch (Error failure) {
      return breakdown(failure);
    }
  }

  private void complainOfLostOutput(String reason) {
    surface.complain(
        "dryfloor: the answer could not be written in full: "
            + reason
            + "\nMake room or name another place, and ask again.\n");
  }

  private CommandLine commandLine() {
    return new CommandLine(new DryfloorCommand())
        .addSubcommand(new CheckCommand(workplace))
        .addSubcommand(new TellCommand(workplace))
        .addSubcommand(new PairsCommand(workplace))
        .addSubcommand(new SetsCommand(workplace))
        .addSubcommand(new LimitsCommand(workplace))
        .addSubcommand(new AwayCommand(workplace))
        .addSubcommand(new BandsCommand(workplace))
        .addSubcommand(new WarningsCommand(workplace))
        .addSubcommand(new ListCommand(workplace))
        .addSubcommand(new DrawCommand(workplace))
        .addSubcommand(new ReportCommand(workplace))
        .addSubcommand(new CompareCommand(workplace))
        .addSubcommand(new RehearseCommand(workplace))
        .addSubcommand(new ViewCommand(workplace, window))
        .addSubcommand(new ValidateCommand(workplace))
        .addSubcommand(new NewCommand(workplace))
        .addSubcommand(new CompletionCommand(workplace))
        .setOut(surface.out().writer())
        .setErr(surface.err().writer())
        .setColorScheme(
            CommandLine.Help.defaultColorScheme(surface.ink().colour() ? Ansi.ON : Ansi.OFF))
        .setParameterExceptionHandler((mistake, line) -> usage(mistake))
        .setExecutionExceptionHandler((failure, line, result) -> breakdown(failure));
  }

  private int usage(ParameterException mistake) {
    String message = VisibleText.of(words(mistake));
    surface.complain("dryfloor: " + surface.errInk().fit(message) + "\n");
    UnmatchedArgumentException.printSuggestions(mistake, surface.err().writer());
    String command = mistake.getCommandLine().getCommandSpec().qualifiedName();
    surface.complain("'" + command + " --help' tells how to ask.\n");
    return ExitCode.BAD_INPUT.number();
  }

  private static String words(ParameterException mistake) {
    if (mistake instanceof UnmatchedArgumentException unmatched) {
      String first = unmatched.getUnmatched().getFirst();
      return unmatched.isUnknownOption()
          ? "there is no option '" + first + "' here"
          : isCommandWanted(mistake)
              ? "there is no command '" + first + "'"
              : "'" + first + "' is one word too many";
    }
    return String.valueOf(mistake.getMessage());
  }

  /** The word stands where a command has to. */
  private static boolean isCommandWanted(ParameterException mistake) {
    return mistake.getCommandLine().getCommand() instanceof DryfloorCommand;
  }

  /** Says that the program itself failed, and how to go on; the exit code. */
  public int breakdown(Throwable failure) {
    surface.complain(
        failure instanceof OutOfMemoryError
            ? Breakdown.OUT_OF_MEMORY
            : Breakdown.of(failure, surface.errInk()));
    if (traced) {
      failure.printStackTrace(surface.err().writer());
      surface.err().writer().flush();
    }
    return ExitCode.NO_ANSWER.number();
  }
}
