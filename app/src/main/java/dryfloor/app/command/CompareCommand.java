package dryfloor.app.command;

import dryfloor.analysis.comparison.Changes;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.app.paper.PaperFile;
import dryfloor.app.paper.PaperSize;
import dryfloor.app.paper.Papers;
import dryfloor.app.report.CompareReport;
import dryfloor.app.report.JsonChanges;
import dryfloor.app.report.ProblemReport;
import dryfloor.model.Installation;
import dryfloor.model.file.Problem;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
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
      "Examples:",
      "  dryfloor compare shop-v1.json shop-v2.json",
      "  dryfloor compare shop-v1.json shop-v2.json --to papers"
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

  @Option(
      names = "--to",
      paramLabel = "FOLDER",
      description = "Write it as a page and on sheets too, into this folder.")
  private Optional<Path> folder = Optional.empty();

  @Option(
      names = "--paper",
      paramLabel = "a4|letter",
      converter = PaperSizeName.class,
      description = "The sheets. Default: a4.")
  private PaperSize paper = PaperSize.A4;

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
    if (folder.isPresent() && !write(folder.get(), before, now)) {
      return ExitCode.BAD_INPUT;
    }
    if (ExitCode.of(now.results()) == ExitCode.NO_ANSWER) {
      return ExitCode.NO_ANSWER;
    }
    return changes.worse().isEmpty() ? ExitCode.FLOOR_DRY : ExitCode.FLOOR_WET;
  }

  private boolean write(Path into, SweepResult before, SweepResult now) {
    PaperFolder papers = new PaperFolder(into, present, workplace.surface());
    try {
      boolean written = true;
      for (PaperFile page :
          Papers.compared(
              new Papers.Version(old, before),
              new Papers.Version(present, now),
              LocalDate.now(ZoneId.systemDefault()),
              options.wording(now.installation()),
              paper)) {
        written &= papers.write(page);
      }
      return written;
    } catch (IOException unreadable) {
      workplace.surface().complain("dryfloor: a drawing can't be read any more\n");
      return false;
    }
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
      return refuse(
          file, workplace.drawings().placed(file, BaselineComplaint.of(installation, problem)));
    }
  }

  private Optional<SweepResult> refuse(Path file, List<Problem> problems) {
    Surface surface = workplace.surface();
    surface.complain(ProblemReport.of(file, problems, surface.errInk()));
    return Optional.empty();
  }
}
