package dryfloor.app.command;

import dryfloor.analysis.comparison.Changes;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.app.report.CompareReport;
import dryfloor.app.report.JsonChanges;
import dryfloor.app.report.ProblemReport;
import dryfloor.model.Installation;
import dryfloor.model.file.Problem;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Compares two drawings, failure by failure. */
@Command(
    name = "compare",
    description = "Compare two versions of a drawing: what ends better, worse, the same.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Exit codes: 0 nothing ends worse, 1 something ends worse, 2 a drawing is wrong,",
      "3 a failure of the new drawing has no answer.",
      "",
      "Example:",
      "  dryfloor compare shop-v1.json shop-v2.json"
    })
public final class CompareCommand implements Callable<Integer> {

  private final Workplace workplace;

  @Parameters(index = "0", paramLabel = "OLD", description = "The drawing as it was.")
  private Path old = Path.of("");

  @Parameters(index = "1", paramLabel = "NEW", description = "The drawing as it is now.")
  private Path present = Path.of("");

  @Mixin private AnswerOptions options = new AnswerOptions();

  @Option(names = "--json", description = "Write the answer as JSON for other programs.")
  private boolean json;

  @Mixin private Threads threads = new Threads();

  /** A command at this workplace. */
  public CompareCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() {
    Optional<SweepResult> before = answered(old);
    Optional<SweepResult> now = answered(present);
    return before
        .flatMap(then -> now.map(later -> compare(then, later)))
        .orElse(ExitCode.BAD_INPUT)
        .number();
  }

  private ExitCode compare(SweepResult before, SweepResult now) {
    Changes changes = Changes.between(before, now);
    workplace
        .surface()
        .answer(
            json
                ? JsonChanges.of(changes)
                : CompareReport.of(
                    changes,
                    options.wording(now.installation()),
                    before.installation(),
                    workplace.surface().ink()));
    if (ExitCode.of(now.results()) == ExitCode.NO_ANSWER) {
      return ExitCode.NO_ANSWER;
    }
    return changes.worse().isEmpty() ? ExitCode.FLOOR_DRY : ExitCode.FLOOR_WET;
  }

  /** The answers for a file; nothing where it has none, which is then told. */
  private Optional<SweepResult> answered(Path file) {
    return switch (workplace.drawings().load(file)) {
      case Loaded.Refused refused -> refuse(file, refused.problems());
      case Loaded.Drawing drawing -> answered(file, options.asked(drawing.installation()));
    };
  }

  private Optional<SweepResult> answered(Path file, Installation installation) {
    Optional<Problem> nothing =
        NothingToJudge.of(installation, workplace.analyst().failures(installation));
    if (nothing.isPresent()) {
      return refuse(file, List.of(nothing.get()));
    }
    String task = String.valueOf(file.getFileName());
    try (WatchedProgress progress = new WatchedProgress(task, workplace.surface())) {
      return Optional.of(workplace.analyst().everyFailure(installation, threads.count(), progress));
    } catch (BaselineProblem problem) {
      return refuse(file, List.of(BaselineComplaint.of(installation, problem)));
    }
  }

  private Optional<SweepResult> refuse(Path file, List<Problem> problems) {
    Surface surface = workplace.surface();
    surface.complain(ProblemReport.of(file, problems, surface.errInk()));
    return Optional.empty();
  }
}
