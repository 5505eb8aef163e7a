package dryfloor.app.command;

import dryfloor.analysis.limit.LimitAnswer;
import dryfloor.analysis.limit.LimitResult;
import dryfloor.analysis.limit.Limits;
import dryfloor.analysis.limit.Property;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.app.report.CareSection;
import dryfloor.app.report.JsonAnswer;
import dryfloor.app.report.LimitsReport;
import dryfloor.app.report.ProblemReport;
import dryfloor.app.report.PropertyWords;
import dryfloor.app.report.Wording;
import dryfloor.model.Installation;
import dryfloor.model.file.Problem;
import dryfloor.model.file.VisibleText;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tells how far things can be changed. */
@Command(
    name = "limits",
    description =
        "Tell how high, how low, how big: how far each thing can be changed, one at a time.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Exit codes: 0 a limit is told, 2 the drawing is wrong or nothing fits --of, 3 a search was",
      "not finished.",
      "",
      "Examples:",
      "  dryfloor limits shop.json",
      "  dryfloor limits shop.json --of sump",
      "  dryfloor limits shop.json --of running-level --of siphon-break"
    })
public final class LimitsCommand implements Callable<Integer> {

  private final Workplace workplace;

  @Parameters(index = "0", paramLabel = "FILE", description = "The drawing.")
  private Path file = Path.of("");

  @Option(
      names = "--of",
      paramLabel = "WHAT",
      description =
          "Only what has this in its id, such as running-level, sump or rim.tray; may be given"
              + " again.")
  private List<String> wanted = List.of();

  @Mixin private AnswerOptions options = new AnswerOptions();

  @Option(names = "--json", description = "Write the answer as JSON for other programs.")
  private boolean json;

  @Option(
      names = "--threads",
      paramLabel = "N",
      converter = ThreadCount.class,
      description = "Work on so many limits at once. Default: as many as the machine allows.")
  private int threads = Math.min(ThreadCount.MOST, Runtime.getRuntime().availableProcessors());

  /** A command at this workplace. */
  public LimitsCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() {
    return answer().number();
  }

  private ExitCode answer() {
    return switch (workplace.drawings().load(file)) {
      case Loaded.Refused refused -> refuse(refused.problems());
      case Loaded.Drawing drawing -> answer(options.asked(drawing.installation()));
    };
  }

  private ExitCode answer(Installation installation) {
    List<Property> properties =
        Limits.properties(installation).stream().filter(this::isWanted).toList();
    Optional<Problem> nothing =
        properties.isEmpty()
            ? Optional.of(nothingFits(installation))
            : NothingToJudge.of(installation, workplace.analyst().failures(installation));
    if (nothing.isPresent()) {
      return refuse(List.of(nothing.get()));
    }
    try {
      LimitResult limits = limits(installation, properties);
      tell(limits, options.wording(installation));
      boolean open = limits.answers().stream().anyMatch(LimitAnswer.Cancelled.class::isInstance);
      return open ? ExitCode.NO_ANSWER : ExitCode.FLOOR_DRY;
    } catch (BaselineProblem problem) {
      return refuse(List.of(BaselineComplaint.of(installation, problem)));
    }
  }

  private boolean isWanted(Property property) {
    return wanted.isEmpty()
        || wanted.stream().anyMatch(PropertyWords.id(property).toLowerCase(Locale.ROOT)::contains);
  }

  private Problem nothingFits(Installation installation) {
    String ids =
        Limits.properties(installation).stream()
            .map(PropertyWords::id)
            .collect(Collectors.joining(", "));
    return wanted.isEmpty()
        ? new Problem(0, 0, "", "there is nothing to choose in this drawing", "draw a vessel")
        : new Problem(
            0,
            0,
            "",
            "nothing here has '" + VisibleText.of(String.join("' or '", wanted)) + "' in its id",
            "a part of one of these: " + ids);
  }

  private LimitResult limits(Installation installation, List<Property> properties)
      throws BaselineProblem {
    String task = String.valueOf(file.getFileName());
    try (WatchedProgress progress = new WatchedProgress(task, workplace.surface())) {
      return workplace.analyst().limits(installation, properties, threads, progress);
    }
  }

  private void tell(LimitResult limits, Wording wording) {
    Surface surface = workplace.surface();
    if (json) {
      JsonAnswer answer = new JsonAnswer("limits");
      answer.limited(file, wording, limits);
      surface.answer(answer.text());
    } else {
      surface.answer(LimitsReport.of(limits, wording, surface.ink()));
      surface.answer(CareSection.of(List.of(wording), surface.ink()));
    }
  }

  private ExitCode refuse(List<Problem> problems) {
    if (json) {
      JsonAnswer answer = new JsonAnswer("limits");
      answer.rejected(file, problems);
      workplace.surface().answer(answer.text());
    }
    Surface surface = workplace.surface();
    surface.complain(ProblemReport.of(file, problems, surface.errInk()));
    return ExitCode.BAD_INPUT;
  }
}
