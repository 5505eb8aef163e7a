package dryfloor.app.command;

import dryfloor.analysis.absence.AbsenceResult;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.app.report.AwayReport;
import dryfloor.app.report.Wording;
import dryfloor.model.Installation;
import dryfloor.model.unit.Units;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/** Tells what becomes of an installation while nobody is there. */
@Command(
    name = "away",
    description = "Tell what becomes of an installation while nobody is there for so long.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "For every failure just after you have left: when the first floor is wet, how",
      "much is on floors by the end of each absence, and whether leak sensors, stops",
      "and timers that act meanwhile save anything or make it worse. The longer, the",
      "more it takes to work out.",
      "",
      "Exit codes: 0 every floor stays dry, 1 a floor gets wet, 2 the drawing is wrong,",
      "3 a failure has no answer.",
      "",
      "Examples:",
      "  dryfloor away shop.json",
      "  dryfloor away shop.json 48h 10d",
      "  dryfloor away shop.json 3d --units us",
      "  dryfloor away shop.json --json > away.json"
    })
public final class AwayCommand implements Callable<Integer> {

  private static final double DAY = 86_400;

  /** A night and a day, a long weekend, a week, a holiday. */
  private static final List<Double> USUAL = List.of(DAY, 3 * DAY, 7 * DAY, 14 * DAY);

  private final Workplace workplace;

  /** The drawing is asked about as it is; how long nobody comes is said here. */
  private final AnswerOptions asDrawn = new AnswerOptions();

  @Parameters(index = "0", paramLabel = "FILE", description = "The drawing.")
  private Path file = Path.of("");

  @Parameters(
      index = "1..*",
      arity = "0..*",
      paramLabel = "TIME",
      description = "How long nobody comes, such as 48h or 10d. Without: 1d 3d 7d 14d.")
  private List<String> times = List.of();

  @Spec private CommandSpec spec = CommandSpec.create();

  @Option(
      names = "--units",
      paramLabel = "metric|us",
      converter = ReaderUnits.class,
      completionCandidates = ReaderUnits.class,
      description = "Units to answer in: metric (mm, L) or us (in, gal). Default: metric.")
  private Units units = Units.METRIC;

  @Option(names = "--json", description = "Write the answer as JSON for other programs.")
  private boolean json;

  @Mixin private Threads threads = new Threads();

  /** A command at this workplace. */
  public AwayCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() {
    List<Double> asked = times.isEmpty() ? USUAL : times.stream().map(this::seconds).toList();
    OneDrawing one = new OneDrawing(workplace, "away", file, json);
    return one.judge(asDrawn, installation -> answer(one, installation, asked));
  }

  /** Read here: of a list at the end a word that is no time would count as one word too many. */
  private double seconds(String time) {
    try {
      return new UnattendedTime().convert(time).seconds();
    } catch (TypeConversionException unfit) {
      throw new ParameterException(spec.commandLine(), String.valueOf(unfit.getMessage()), unfit);
    }
  }

  private ExitCode answer(OneDrawing one, Installation installation, List<Double> asked)
      throws BaselineProblem {
    AbsenceResult absences = absences(one, installation, asked);
    Wording wording = Wording.of(installation, units);
    one.tell(
        wording,
        () -> AwayReport.of(absences, wording, workplace.surface().ink()),
        json -> json.leftAlone(file, wording, absences));
    ExitCode wet = absences.wet().isEmpty() ? ExitCode.FLOOR_DRY : ExitCode.FLOOR_WET;
    return absences.unknown().isEmpty() ? wet : wet.worse(ExitCode.NO_ANSWER);
  }

  private AbsenceResult absences(OneDrawing one, Installation installation, List<Double> asked)
      throws BaselineProblem {
    try (WatchedProgress progress = one.progress()) {
      return workplace.analyst().absences(installation, asked, threads.count(), progress);
    }
  }
}
