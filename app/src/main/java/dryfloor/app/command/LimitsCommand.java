package dryfloor.app.command;

import dryfloor.analysis.limit.LimitAnswer;
import dryfloor.analysis.limit.LimitResult;
import dryfloor.analysis.limit.Limits;
import dryfloor.analysis.limit.Property;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.app.report.LimitsReport;
import dryfloor.app.report.PropertyWords;
import dryfloor.app.report.Wording;
import dryfloor.model.Installation;
import dryfloor.model.file.Problem;
import dryfloor.model.file.VisibleText;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tells how far things can be changed. */
@Command(
    name = "limits",
    description = "Tell how far each thing can be changed: how high, how low, how big.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Exit codes: 0 a limit is told, 2 the drawing is wrong or nothing fits --of,",
      "3 a search was not finished.",
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

  @Mixin private Threads threads = new Threads();

  /** A command at this workplace. */
  public LimitsCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() {
    OneDrawing one = new OneDrawing(workplace, "limits", file, json);
    return one.judge(options, installation -> answer(one, installation));
  }

  private ExitCode answer(OneDrawing one, Installation installation) throws BaselineProblem {
    List<Property> properties =
        Limits.properties(installation).stream().filter(this::isWanted).toList();
    if (properties.isEmpty()) {
      return one.refuse(List.of(nothingFits(installation)));
    }
    LimitResult limits = limits(one, installation, properties);
    Wording wording = options.wording(installation);
    one.tell(
        wording,
        () -> LimitsReport.of(limits, wording, workplace.surface().ink()),
        json -> json.limited(file, wording, limits));
    boolean open = limits.answers().stream().anyMatch(LimitAnswer.Cancelled.class::isInstance);
    return open ? ExitCode.NO_ANSWER : ExitCode.FLOOR_DRY;
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

  private LimitResult limits(OneDrawing one, Installation installation, List<Property> properties)
      throws BaselineProblem {
    try (WatchedProgress progress = one.progress()) {
      return workplace.analyst().limits(installation, properties, threads.count(), progress);
    }
  }
}
