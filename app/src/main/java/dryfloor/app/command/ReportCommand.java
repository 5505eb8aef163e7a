package dryfloor.app.command;

import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.analysis.worksheet.SeverityScale;
import dryfloor.app.paper.HtmlPages;
import dryfloor.app.paper.Question;
import dryfloor.app.paper.Report;
import dryfloor.app.paper.ReportWords;
import dryfloor.app.report.ProblemReport;
import dryfloor.app.report.Wording;
import dryfloor.model.Installation;
import dryfloor.model.file.Problem;
import dryfloor.model.file.VisibleText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes everything that is handed over on paper or as a page. */
@Command(
    name = "report",
    description = "Write the papers of a drawing: pages for owner, insurer, installer, service.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Exit codes: 0 every floor stays dry, 1 a floor gets wet, 2 the drawing is wrong or the",
      "papers can't be written, 3 a failure has no answer.",
      "",
      "Examples:",
      "  dryfloor report shop.json                    beside you, to shop.report.html",
      "  dryfloor report shop.json --to papers --units us"
    })
public final class ReportCommand implements Callable<Integer> {

  private final Workplace workplace;

  @Parameters(index = "0", paramLabel = "FILE", description = "The drawing.")
  private Path file = Path.of("");

  @Mixin private AnswerOptions options = new AnswerOptions();

  @Option(
      names = "--to",
      paramLabel = "FOLDER",
      description = "Where to write; made if it is not there. Default: here.")
  private Path folder = Path.of("");

  @Option(
      names = "--date",
      paramLabel = "DATE",
      description = "The date that stands on the papers, such as 2026-11-26. Default: today.")
  private Optional<LocalDate> date = Optional.empty();

  @Option(
      names = "--threads",
      paramLabel = "N",
      converter = ThreadCount.class,
      description = "Work on so many failures at once. Default: as many as the machine allows.")
  private int threads = Math.min(ThreadCount.MOST, Runtime.getRuntime().availableProcessors());

  /** A command at this workplace. */
  public ReportCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() {
    return switch (workplace.drawings().load(file)) {
      case Loaded.Refused refused -> refuse(refused.problems()).number();
      case Loaded.Drawing drawing -> answer(options.asked(drawing.installation())).number();
    };
  }

  private ExitCode answer(Installation installation) {
    Optional<Problem> nothing =
        NothingToJudge.of(installation, workplace.analyst().failures(installation));
    if (nothing.isPresent()) {
      return refuse(List.of(nothing.get()));
    }
    try {
      SweepResult sweep = sweep(installation);
      return write(sweep) ? ExitCode.of(sweep.results()) : ExitCode.BAD_INPUT;
    } catch (BaselineProblem problem) {
      return refuse(List.of(BaselineComplaint.of(installation, problem)));
    }
  }

  private SweepResult sweep(Installation installation) throws BaselineProblem {
    String task = String.valueOf(file.getFileName());
    try (WatchedProgress progress = new WatchedProgress(task, workplace.surface())) {
      return workplace.analyst().everyFailure(installation, threads, progress);
    }
  }

  private boolean write(SweepResult sweep) {
    Path target = folder.resolve(stem() + ".report.html");
    try {
      Report report = ReportWords.of(question(sweep));
      Files.createDirectories(folder.toAbsolutePath());
      Files.writeString(target, HtmlPages.of(report));
    } catch (IOException e) {
      workplace
          .surface()
          .complain(
              "dryfloor: "
                  + VisibleText.of(target.toString())
                  + " can't be written: "
                  + WriteComplaint.of(e)
                  + "\n");
      return false;
    }
    workplace.surface().answer(VisibleText.of(target.toString()) + " written\n");
    return true;
  }

  private Question question(SweepResult sweep) throws IOException {
    Wording wording = options.wording(sweep.installation());
    return new Question(
        sweep,
        wording,
        SeverityScale.USUAL,
        new Report.Drawing(
            sweep.installation().name(),
            String.valueOf(file.getFileName()),
            Fingerprint.of(file),
            date.orElseGet(LocalDate::now).toString(),
            DryfloorCommand.PROGRAM,
            wording.amounts().hours(sweep.installation().conditions().away())));
  }

  private String stem() {
    return String.valueOf(file.getFileName()).replaceFirst("\\.json$", "");
  }

  private ExitCode refuse(List<Problem> problems) {
    Surface surface = workplace.surface();
    surface.complain(ProblemReport.of(file, problems, surface.errInk()));
    return ExitCode.BAD_INPUT;
  }
}
