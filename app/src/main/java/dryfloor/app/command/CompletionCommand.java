package dryfloor.app.command;

import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Prints what a shell needs to complete commands and options. */
@Command(
    name = "completion",
    description = "Print the completion script for bash or zsh.",
    mixinStandardHelpOptions = true,
    footer = {"", "Example:", "  source <(dryfloor completion)"})
public final class CompletionCommand implements Callable<Integer> {

  private final Workplace workplace;

  @Spec private CommandSpec spec = CommandSpec.create();

  /** A command at this workplace. */
  public CompletionCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() {
    workplace.surface().answer(AutoComplete.bash("dryfloor", spec.root().commandLine()));
    return ExitCode.FLOOR_DRY.number();
  }
}
