package dryfloor.app.command;

import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.together.PairAnswer;
import dryfloor.analysis.together.PairResult;
import dryfloor.analysis.together.Scope;
import dryfloor.app.report.PairsReport;
import dryfloor.app.report.Wording;
import dryfloor.model.Installation;
import java.nio.file.Path;
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
      "Without --visible and --all, every hidden failure meets everything that can",
      "happen to the power: that is how most floods begin. The more is asked, the",
      "longer it takes.",
      "",
      "Exit codes: 0 every floor stays dry, 1 a floor gets wet, by a pair or by one",
      "failure alone, 2 the drawing is wrong, 3 a pair has no answer.",
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

  @Mixin private Threads threads = new Threads();

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
    OneDrawing one = new OneDrawing(workplace, "pairs", file, json);
    return one.judge(options, installation -> answer(one, installation));
  }

  private ExitCode answer(OneDrawing one, Installation installation) throws BaselineProblem {
    PairResult pairs = pairs(one, installation);
    Wording wording = options.wording(installation);
    one.tell(
        wording,
        () -> PairsReport.of(pairs, wording, workplace.surface().ink()),
        json -> json.paired(file, wording, pairs));
    return exitCode(pairs);
  }

  private PairResult pairs(OneDrawing one, Installation installation) throws BaselineProblem {
    try (WatchedProgress progress = one.progress()) {
      return workplace.analyst().pairs(installation, asked.scope(), threads.count(), progress);
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
}
