package dryfloor.app.command;

import dryfloor.analysis.failure.Failure;
import dryfloor.app.report.FailureList;
import dryfloor.model.Installation;
import dryfloor.model.file.Problem;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
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
    OneDrawing one = new OneDrawing(workplace, "list", file, false);
    return one.ask(new AnswerOptions(), installation -> list(one, installation));
  }

  private ExitCode list(OneDrawing one, Installation installation) {
    List<Failure> failures = workplace.analyst().failures(installation);
    Optional<Problem> nothing = NothingToJudge.of(installation, failures);
    if (failures.isEmpty() && nothing.isPresent()) {
      return one.refuse(List.of(nothing.get()));
    }
    Surface surface = workplace.surface();
    surface.answer(FailureList.of(installation, failures, surface.ink()));
    return ExitCode.FLOOR_DRY;
  }
}
