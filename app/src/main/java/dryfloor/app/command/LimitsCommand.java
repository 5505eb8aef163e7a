package dryfloor.app.command;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.limit.Bounds;
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
        "Tell how far each thing can be changed: how high, how low, how big; and what mends the"
            + " failures that wet a floor.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Exit codes: 0 a limit or mend is told, 2 the drawing is wrong or nothing fits --of or"
          + " --mend,",
      "3 a search was not finished.",
      "",
      "Examples:",
      "  dryfloor limits shop.json",
      "  dryfloor limits shop.json --of sump",
      "  dryfloor limits shop.json --of running-level --of siphon-break",
      "  dryfloor limits shop.json --keep '80 %%' --salinity '33 g/kg' '37 g/kg'",
      "  dryfloor limits shop.json --mend power-lost.building"
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

  @Option(
      names = "--mend",
      paramLabel = "FAILURE",
      description =
          "Only what mends this failure, by a number or by something added: its id or any part of"
              + " it that fits only one.")
  private Optional<String> mend = Optional.empty();

  @Mixin private AnswerOptions options = new AnswerOptions();
  @Mixin private BoundsOptions within = new BoundsOptions();

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
    Bounds bounds = within.bounds();
    return one.judge(options, installation -> answer(one, installation, bounds));
  }

  private ExitCode answer(OneDrawing one, Installation installation, Bounds bounds)
      throws BaselineProblem {
    return mend.isPresent()
        ? mends(one, installation, bounds, mend.get())
        : limits(one, installation, bounds);
  }

  private ExitCode mends(
      OneDrawing one, Installation installation, Bounds bounds, String wantedFailure)
      throws BaselineProblem {
    List<Failure> failures = workplace.analyst().failures(installation);
    return switch (new FailureSearch(failures, installation).find(wantedFailure)) {
      case FailureSearch.Found.Unclear unclear ->
          one.refuse(
              List.of(new Problem(0, 0, "", unclear.complaint(), "give the id of one failure")));
      case FailureSearch.Found.Meant meant -> {
        mends(one, installation, bounds, meant.failure());
        yield ExitCode.FLOOR_DRY;
      }
    };
  }

  private void mends(OneDrawing one, Installation installation, Bounds bounds, Failure failure)
      throws BaselineProblem {
    Wording wording = options.wording(installation);
    try (WatchedProgress progress = one.progress()) {
      LimitResult mends =
          workplace.analyst().mends(installation, failure, bounds, threads.count(), progress);
      one.tell(
          wording,
          () -> LimitsReport.ofMends(mends, failure, wording, workplace.surface().ink()),
          json -> json.limited(file, wording, mends));
    }
  }

  private ExitCode limits(OneDrawing one, Installation installation, Bounds bounds)
      throws BaselineProblem {
    List<Property> properties =
        Limits.properties(installation).stream().filter(this::isWanted).toList();
    if (properties.isEmpty()) {
      return one.refuse(List.of(nothingFits(installation)));
    }
    LimitResult limits = limits(one, installation, properties, bounds);
    tell(one, installation, limits);
    boolean open = limits.answers().stream().anyMatch(LimitAnswer.Cancelled.class::isInstance);
    return open ? ExitCode.NO_ANSWER : ExitCode.FLOOR_DRY;
  }

  private void tell(OneDrawing one, Installation installation, LimitResult limits) {
    Wording wording = options.wording(installation);
    one.tell(
        wording,
        () -> LimitsReport.of(limits, wording, workplace.surface().ink()),
        json -> json.limited(file, wording, limits));
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

  private LimitResult limits(
      OneDrawing one, Installation installation, List<Property> properties, Bounds bounds)
      throws BaselineProblem {
    try (WatchedProgress progress = one.progress()) {
      return workplace
          .analyst()
          .limits(installation, properties, bounds, threads.count(), progress);
    }
  }
}
