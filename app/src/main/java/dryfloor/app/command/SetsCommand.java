package dryfloor.app.command;

import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.together.CutSetResult;
import dryfloor.analysis.together.PairAnswer;
import dryfloor.app.report.CutSetsReport;
import dryfloor.app.report.Wording;
import dryfloor.model.Installation;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Finds the smallest sets of failures that wet a floor. */
@Command(
    name = "sets",
    description = "Tell the smallest sets of failures, up to three at once, that wet a floor.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Every failure, every two and every three are looked at: minutes for a few",
      "dozen components. In each set all failures are needed; without any one of them",
      "every floor stays dry. In fault-tree practice these are minimal cut sets.",
      "",
      "Exit codes: 0 no set wets a floor, 1 a floor gets wet, 2 the drawing is wrong,",
      "3 a set has no answer.",
      "",
      "Examples:",
      "  dryfloor sets shop.json",
      "  dryfloor sets shop.json --json > sets.json"
    })
public final class SetsCommand implements Callable<Integer> {

  private final Workplace workplace;

  @Parameters(index = "0", paramLabel = "FILE", description = "The drawing.")
  private Path file = Path.of("");

  @Mixin private AnswerOptions options = new AnswerOptions();

  @Option(names = "--json", description = "Write the answer as JSON for other programs.")
  private boolean json;

  @Mixin private Threads threads = new Threads();

  /** A command at this workplace. */
  public SetsCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() {
    OneDrawing one = new OneDrawing(workplace, "sets", file, json);
    return one.judge(options, installation -> answer(one, installation));
  }

  private ExitCode answer(OneDrawing one, Installation installation) throws BaselineProblem {
    CutSetResult sets = sets(one, installation);
    Wording wording = options.wording(installation);
    one.tell(
        wording,
        () -> CutSetsReport.of(sets, wording, workplace.surface().ink()),
        json -> json.cutSets(file, wording, sets));
    return exitCode(sets);
  }

  private CutSetResult sets(OneDrawing one, Installation installation) throws BaselineProblem {
    try (WatchedProgress progress = one.progress()) {
      return workplace.analyst().cutSets(installation, threads.count(), progress);
    }
  }

  private static ExitCode exitCode(CutSetResult sets) {
    ExitCode worst = ExitCode.of(sets.pairs().alone().results());
    if (!sets.sets().isEmpty()) {
      worst = worst.worse(ExitCode.FLOOR_WET);
    }
    boolean all =
        sets.unanswered().isEmpty() && sets.pairs().of(PairAnswer.Unanswered.class).isEmpty();
    return all ? worst : worst.worse(ExitCode.NO_ANSWER);
  }
}
