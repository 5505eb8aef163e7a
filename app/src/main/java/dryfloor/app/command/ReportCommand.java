package dryfloor.app.command;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.mark.Marks;
import dryfloor.analysis.mark.VesselMarks;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.analysis.worksheet.SeverityScale;
import dryfloor.app.paper.PaperFile;
import dryfloor.app.paper.PaperForm;
import dryfloor.app.paper.PaperSize;
import dryfloor.app.paper.Papers;
import dryfloor.app.paper.Question;
import dryfloor.app.report.ReadAgain;
import dryfloor.model.Installation;
import dryfloor.model.file.UncertainDrawing;
import dryfloor.model.file.VisibleText;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
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
      "Exit codes: 0 every floor stays dry, 1 a floor gets wet, 2 the drawing is wrong",
      "or the papers can't be written, 3 a failure has no answer.",
      "",
      "Examples:",
      "  dryfloor report shop.json                    beside you, in every form",
      "  dryfloor report shop.json --to papers --units us --paper letter",
      "  dryfloor report shop.json --form html,csv"
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
      names = "--form",
      paramLabel = "FORM",
      split = ",",
      description = "html, pdf, csv, xlsx, json, or some of them. Default: all.")
  private List<PaperForm> forms = List.of(PaperForm.values());

  @Option(
      names = "--paper",
      paramLabel = "a4|letter",
      converter = PaperSizeName.class,
      description = "The sheets of a PDF. Default: a4.")
  private PaperSize paper = PaperSize.A4;

  @Option(
      names = "--severity",
      paramLabel = "SOME,MUCH",
      converter = SeverityLines.class,
      description =
          "Water on floors up to which a failure is of severity 3, and from which on it is of 5."
              + " Default: 10L,100L.")
  private SeverityScale severity = SeverityScale.USUAL;

  @Option(
      names = "--mends",
      paramLabel = "N",
      converter = MendCount.class,
      description =
          "Look for what mends N failures that wet a floor, the power loss and then the worst, at most"
              + " 10, and put it on the owner's page and the worksheet. This takes half a minute each"
              + " and more. Default: 0.")
  private int mends;

  @Option(
      names = "--bands",
      description =
          "Work out how bad and how good each failure can be, however many values carry a"
              + " tolerance. Where that takes some seconds only, it is done anyhow.")
  private boolean banded;

  @Mixin private Threads threads = new Threads();

  /** A command at this workplace. */
  public ReportCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() {
    OneDrawing one = new OneDrawing(workplace, "report", file, false);
    return one.judge(
        options,
        (installation, uncertain) -> {
          SweepResult sweep = sweep(one, installation);
          Optional<Question.Banded> bands = bands(one, sweep, uncertain);
          return write(sweep, marks(one, sweep), mended(one, sweep), bands)
              ? ExitCode.of(sweep.results())
              : ExitCode.BAD_INPUT;
        });
  }

  private SweepResult sweep(OneDrawing one, Installation installation) throws BaselineProblem {
    try (WatchedProgress progress = one.progress()) {
      return workplace.analyst().everyFailure(installation, threads.count(), progress);
    }
  }

  private List<VesselMarks> marks(OneDrawing one, SweepResult sweep) {
    try (WatchedProgress progress = one.progress()) {
      return Marks.of(sweep, threads.count(), progress);
    }
  }

  private List<Question.Mended> mended(OneDrawing one, SweepResult sweep) {
    List<Question.Mended> all = new ArrayList<>();
    for (Failure failure : Question.Mended.worst(sweep, mends)) {
      try (WatchedProgress progress = one.progress()) {
        all.add(Question.Mended.of(sweep, failure, threads.count(), progress));
      }
    }
    return all;
  }

  private Optional<Question.Banded> bands(
      OneDrawing one, SweepResult sweep, UncertainDrawing uncertain) throws BaselineProblem {
    ReadAgain drawing = new ReadAgain(uncertain, options::asked);
    if (drawing.values() == 0 || !(banded || Question.Banded.isQuick(drawing, sweep))) {
      return Optional.empty();
    }
    try (WatchedProgress progress = one.progress()) {
      return Optional.of(Question.Banded.of(drawing, threads.count(), progress));
    }
  }

  private boolean write(
      SweepResult sweep,
      List<VesselMarks> marks,
      List<Question.Mended> mended,
      Optional<Question.Banded> bands) {
    Question question;
    try {
      question =
          Papers.question(
                  file,
                  date.orElseGet(LocalDate::now),
                  sweep,
                  marks,
                  mended,
                  options.wording(sweep.installation()),
                  severity)
              .with(bands);
    } catch (IOException unreadable) {
      workplace
          .surface()
          .complain("dryfloor: " + VisibleText.of(file.toString()) + " can't be read any more\n");
      return false;
    }
    PaperFolder papers = new PaperFolder(folder, file, workplace.surface());
    boolean written = true;
    try (ExecutorService makers = Executors.newFixedThreadPool(threads.count())) {
      List<PaperFile> begun =
          Papers.of(question, forms, paper).stream().map(one -> one.begun(makers)).toList();
      for (PaperFile paperFile : begun) {
        written &= papers.write(paperFile);
      }
    }
    return written;
  }
}
