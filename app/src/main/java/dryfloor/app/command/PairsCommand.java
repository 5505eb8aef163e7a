package dryfloor.app.command;

import dryfloor.analysis.pair.PairAnswer;
import dryfloor.analysis.pair.PairResult;
import dryfloor.analysis.pair.Scope;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.app.report.CareSection;
import dryfloor.app.report.JsonAnswer;
import dryfloor.app.report.PairsReport;
import dryfloor.app.report.ProblemReport;
import dryfloor.app.report.Wording;
import dryfloor.model.Installation;
import dryfloor.model.file.Problem;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Answers two failures at a time. */
@Command(
    name = "pairs",
    description = "Tell which two failures wet a floor together though neither does so alone.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Without --visible and --all, every hidden failure meets everything that can happen to the",
      "power: that is how most floods begin. The more is asked, the longer it takes.",
      "",
      "Exit codes: 0 every floor stays dry, 1 a floor gets wet, by a pair or by one failure alone,",
      "2 the drawing is wrong, 3 a pair has no answer.",
      "",
      "Examples:",
      "  dryfloor pairs shop.json",
      "  dryfloor pairs shop.json --visible",
      "  dryfloor pairs shop.json --all --json > pairs.json"
    })
public final class PairsCommand implements Callable<Integer> {

  private final Workplace workplace;

  @Parameters(index = "0", paramLabel = "FILE", description = "The drawing.")
  private Path file = Path.of("");

  @ArgGroup(exclusive = true)
  private Asked asked = new Asked();

  @Mixin private AnswerOptions options = new AnswerOptions();

  @Option(names = "--json", description = "Write the answer as JSON for other programs.")
  private boolean json;

  @Option(
      names = "--threads",
      paramLabel = "N",
      converter = ThreadCount.class,
      description = "Work on so many pairs at once. Default: as many as the machine allows.")
  private int threads = Math.min(ThreadCount.MOST, Runtime.getRuntime().availableProcessors());

  /** Which pairs are asked about. */
  static final class Asked {

    @Option(
        names = "--visible",
        description = "Every hidden failure with every failure that shows at once.")
    private boolean visible;

    @Option(names = "--all", description = "Every two failures.")
    private boolean all;

    Scope scope() {
      return all
          ? Scope.EVERY_TWO
          : visible ? Scope.HIDDEN_WITH_ANY_EVENT : Scope.HIDDEN_WITH_POWER;
    }
  }

  /** A command at this workplace. */
  public PairsCommand(Workplace workplace) {
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
    Optional<Problem> nothing =
        NothingToJudge.of(installation, workplace.analyst().failures(installation));
    if (nothing.isPresent()) {
      return refuse(List.of(nothing.get()));
    }
    try {
      PairResult pairs = pairs(installation);
      tell(pairs, options.wording(installation));
      return exitCode(pairs);
    } catch (BaselineProblem problem) {
      return refuse(List.of(BaselineComplaint.of(installation, problem)));
    }
  }

  private PairResult pairs(Installation installation) throws BaselineProblem {
    String task = String.valueOf(file.getFileName());
    try (WatchedProgress progress = new WatchedProgress(task, workplace.surface())) {
      return workplace.analyst().pairs(installation, asked.scope(), threads, progress);
    }
  }

  private void tell(PairResult pairs, Wording wording) {
    Surface surface = workplace.surface();
    if (json) {
      JsonAnswer answer = new JsonAnswer("pairs");
      answer.paired(file, wording, pairs);
      surface.answer(answer.text());
    } else {
      surface.answer(PairsReport.of(pairs, wording, surface.ink()));
      surface.answer(CareSection.of(List.of(wording), surface.ink()));
    }
  }

  private static ExitCode exitCode(PairResult pairs) {
    ExitCode worst = ExitCode.of(pairs.alone().results());
    if (!pairs.newlyWet().isEmpty()) {
      worst = worst.worse(ExitCode.FLOOR_WET);
    }
    return pairs.of(PairAnswer.Unanswered.class).isEmpty()
        ? worst
        : worst.worse(ExitCode.NO_ANSWER);
  }

  private ExitCode refuse(List<Problem> problems) {
    if (json) {
      JsonAnswer answer = new JsonAnswer("pairs");
      answer.rejected(file, problems);
      workplace.surface().answer(answer.text());
    }
    Surface surface = workplace.surface();
    surface.complain(ProblemReport.of(file, problems, surface.errInk()));
    return ExitCode.BAD_INPUT;
  }
}
