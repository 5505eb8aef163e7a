package dryfloor.app.command;

import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.rehearsal.Rehearsal;
import dryfloor.analysis.rehearsal.RehearsalStep;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.app.paper.Fingerprint;
import dryfloor.app.paper.Papers;
import dryfloor.app.report.ProblemReport;
import dryfloor.app.report.RehearsalRecord;
import dryfloor.app.report.Wording;
import dryfloor.model.Installation;
import dryfloor.model.file.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Takes measured levels back and says what fits, what differs and what would explain it. */
@Command(
    name = "rehearse",
    description = "Compare levels that were measured in a rehearsal with what was expected.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Fill in measured_below_rim_mm in the .rehearsal.csv that 'report' writes.",
      "Exit codes: 0 all fits, 1 something differs, 2 the drawing or the sheet is wrong.",
      "",
      "Example:",
      "  dryfloor rehearse shop.json shop.rehearsal.csv"
    })
public final class RehearseCommand implements Callable<Integer> {

  private final Workplace workplace;

  @Parameters(index = "0", paramLabel = "FILE", description = "The drawing.")
  private Path file = Path.of("");

  @Parameters(index = "1", paramLabel = "SHEET", description = "The sheet, filled in (CSV).")
  private Path sheet = Path.of("");

  @Mixin private AnswerOptions options = new AnswerOptions();

  @Option(
      names = "--to",
      paramLabel = "FOLDER",
      description = "Where to keep the dated record. Default: here.")
  private Path folder = Path.of("");

  @Option(
      names = "--date",
      paramLabel = "DATE",
      description = "The day on which it was measured, such as 2026-11-26. Default: today.")
  private Optional<LocalDate> date = Optional.empty();

  @Mixin private Threads threads = new Threads();

  /** A command at this workplace. */
  public RehearseCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() {
    OneDrawing one = new OneDrawing(workplace, "rehearse", file, false);
    return one.judge(options, installation -> judge(one, installation));
  }

  private ExitCode judge(OneDrawing one, Installation installation) throws BaselineProblem {
    try {
      List<RehearsalStep> steps = steps(one, installation);
      MeasuredSheet measured = MeasuredSheet.of(Files.readString(sheet), steps);
      return measured.problems().isEmpty()
          ? judge(installation, steps, measured, another(measured))
          : refuseSheet(measured.problems());
    } catch (IOException unreadable) {
      return refuseSheet(
          List.of(new Problem(0, 0, "", "the sheet can't be read", "a CSV file in UTF-8")));
    }
  }

  private List<RehearsalStep> steps(OneDrawing one, Installation installation)
      throws BaselineProblem {
    try (WatchedProgress progress = one.progress()) {
      return Rehearsal.of(
          workplace.analyst().everyFailure(installation, threads.count(), progress));
    }
  }

  private ExitCode judge(
      Installation installation,
      List<RehearsalStep> steps,
      MeasuredSheet measured,
      boolean another) {
    if (another) {
      workplace
          .surface()
          .complain(
              "dryfloor: the sheet was made for another version of this drawing; what is expected"
                  + " below is what the drawing says now\n");
    }
    List<RehearsalRecord.Rehearsed> all = new ArrayList<>();
    for (RehearsalStep step : steps) {
      List<RehearsalRecord.Level> levels =
          measured.levels().getOrDefault(FailureNames.id(step.result().failure()), List.of());
      if (!levels.isEmpty()) {
        all.add(RehearsalRecord.Rehearsed.of(installation, step, levels));
      }
    }
    Wording wording = options.wording(installation);
    workplace
        .surface()
        .answer(RehearsalRecord.text(all, Rehearsal.TOLERANCE, wording, workplace.surface().ink()));
    if (!keep(all, measured.madeFor(), wording)) {
      return ExitCode.BAD_INPUT;
    }
    return all.stream().allMatch(one -> one.fits(Rehearsal.TOLERANCE))
        ? ExitCode.FLOOR_DRY
        : ExitCode.FLOOR_WET;
  }

  /** Whether a sheet names another drawing than this, or another version of it. */
  private boolean another(MeasuredSheet measured) throws IOException {
    String now = Fingerprint.of(file);
    return measured.madeFor().stream().anyMatch(then -> !then.equals(now));
  }

  private boolean keep(
      List<RehearsalRecord.Rehearsed> all, Optional<String> madeFor, Wording wording) {
    String day = date.orElseGet(LocalDate::now).toString();
    return new PaperFolder(folder, file, workplace.surface())
        .write(Papers.record(file, day, all, madeFor, wording));
  }

  private ExitCode refuseSheet(List<Problem> problems) {
    Surface surface = workplace.surface();
    surface.complain(ProblemReport.of(sheet, problems, surface.errInk()));
    return ExitCode.BAD_INPUT;
  }
}
