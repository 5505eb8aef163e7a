package dryfloor.app.command;

import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.app.report.CareSection;
import dryfloor.app.report.CheckReport;
import dryfloor.app.report.CheckSummary;
import dryfloor.app.report.Ink;
import dryfloor.app.report.JsonAnswer;
import dryfloor.app.report.ProblemReport;
import dryfloor.app.report.Wording;
import dryfloor.model.Installation;
import dryfloor.model.file.Problem;
import dryfloor.model.file.VisibleText;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Answers every failure of one or more drawings. */
@Command(
    name = "check",
    description = "Answer every failure of a drawing, worst first.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Exit codes: 0 every floor stays dry, 1 a floor gets wet, 2 the drawing is wrong,",
      "3 a failure has no answer.",
      "",
      "Examples:",
      "  dryfloor check shop.json",
      "  dryfloor check shop.json --away 14d --units us",
      "  dryfloor check drawings/ --json > answers.json"
    })
public final class CheckCommand implements Callable<Integer> {

  private final Workplace workplace;
  private final CheckSummary summary = new CheckSummary();
  private final JsonAnswer answers = new JsonAnswer("check");
  private final List<Wording> told = new ArrayList<>();
  private boolean several;

  @Parameters(
      arity = "1..*",
      paramLabel = "FILE|FOLDER",
      description = "Drawings; a folder means every .json file in it and its folders.")
  private List<Path> files = List.of();

  @Mixin private AnswerOptions options = new AnswerOptions();

  @Option(names = "--json", description = "Write the answer as JSON for other programs.")
  private boolean json;

  @Mixin private Threads threads = new Threads();

  /** A command at this workplace. */
  public CheckCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() {
    List<Loaded> all = workplace.drawings().loadAll(files);
    several = all.size() > 1;
    ExitCode worst = ExitCode.FLOOR_DRY;
    for (Loaded loaded : all) {
      worst = worst.worse(check(loaded));
    }
    if (json) {
      workplace.surface().answer(answers.text());
    } else {
      finish();
    }
    return worst.number();
  }

  /** What is said once, however many drawings there are. */
  private void finish() {
    Ink ink = workplace.surface().ink();
    if (several) {
      workplace.surface().answer(summary.text(ink));
    }
    if (!told.isEmpty()) {
      workplace.surface().answer(CareSection.of(told, ink));
    }
  }

  private ExitCode check(Loaded loaded) {
    return switch (loaded) {
      case Loaded.Refused refused -> refuse(refused.file(), refused.problems());
      case Loaded.Drawing drawing -> check(drawing.file(), options.asked(drawing.installation()));
    };
  }

  private ExitCode check(Path file, Installation installation) {
    Optional<Problem> nothing =
        NothingToJudge.of(installation, workplace.analyst().failures(installation));
    if (nothing.isPresent()) {
      return refuse(file, List.of(nothing.get()));
    }
    try {
      SweepResult sweep = sweep(file, installation);
      tell(file, sweep, options.wording(installation));
      return ExitCode.of(sweep.results());
    } catch (BaselineProblem problem) {
      return refuse(
          file, workplace.drawings().placed(file, BaselineComplaint.of(installation, problem)));
    } catch (OutOfMemoryError tooLarge) {
      return outOfMemory(file);
    }
  }

  private SweepResult sweep(Path file, Installation installation) throws BaselineProblem {
    String task = String.valueOf(file.getFileName());
    try (WatchedProgress progress = new WatchedProgress(task, workplace.surface())) {
      return workplace.analyst().everyFailure(installation, threads.count(), progress);
    }
  }

  private void tell(Path file, SweepResult sweep, Wording wording) {
    if (json) {
      answers.answered(file, wording, Optional.of(sweep.normal()), sweep.worstFirst());
      return;
    }
    summary.answered(file, sweep);
    if (!told.isEmpty()) {
      workplace.surface().answer("\n");
    }
    told.add(wording);
    if (several) {
      workplace
          .surface()
          .answer(workplace.surface().ink().fit(VisibleText.of(file.toString())) + "\n");
    }
    workplace.surface().answer(CheckReport.of(sweep, wording, workplace.surface().ink()));
  }

  /** One drawing that is too large must not take the answers for the others with it. */
  private ExitCode outOfMemory(Path file) {
    if (json) {
      answers.unanswered(file, Breakdown.NO_ROOM);
    }
    summary.unanswered(file);
    Surface surface = workplace.surface();
    surface.complain(surface.errInk().fit(VisibleText.of(file.toString())) + ":\n");
    surface.complain(Breakdown.OUT_OF_MEMORY);
    return ExitCode.NO_ANSWER;
  }

  private ExitCode refuse(Path file, List<Problem> problems) {
    if (json) {
      answers.rejected(file, problems);
    }
    summary.refused(file);
    Surface surface = workplace.surface();
    surface.complain(ProblemReport.of(file, problems, surface.errInk()));
    return ExitCode.BAD_INPUT;
  }
}
