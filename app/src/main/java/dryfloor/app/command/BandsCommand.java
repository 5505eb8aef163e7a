package dryfloor.app.command;

import dryfloor.analysis.band.BandResult;
import dryfloor.analysis.band.Sampling;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.app.report.BandWords;
import dryfloor.app.report.BandsReport;
import dryfloor.app.report.ReadAgain;
import dryfloor.app.report.Wording;
import dryfloor.model.Installation;
import dryfloor.model.file.Problem;
import dryfloor.model.file.UncertainDrawing;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells how bad and how good every failure can be where not everything is known exactly. */
@Command(
    name = "bands",
    description = "Tell how bad and how good it can be where values carry a tolerance.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Write a tolerance behind any quantity of the drawing: \"580 mm ± 5 mm\" (or +/-),",
      "\"40 L/min ± 10 %%\", \"8 mm to 12 mm\". Every failure is run as drawn, with each",
      "such value alone at each end, and with every combination of ends; of more than",
      "six values the combinations are searched. Which value matters most is told for",
      "each failure and for all.",
      "",
      "Exit codes: 0 every floor stays dry whatever the values, 1 a floor can get wet,",
      "2 the drawing is wrong or all of it is exact, 3 somewhere there is no answer.",
      "",
      "Examples:",
      "  dryfloor bands shop.json",
      "  dryfloor bands shop.json --samples 500 --seed 7",
      "  dryfloor bands shop.json --json > bands.json"
    })
public final class BandsCommand implements Callable<Integer> {

  private static final int MOST_SAMPLES = 100_000;

  private final Workplace workplace;

  @Parameters(index = "0", paramLabel = "FILE", description = "The drawing.")
  private Path file = Path.of("");

  @Mixin private AnswerOptions options = new AnswerOptions();

  @Option(
      names = "--samples",
      paramLabel = "N",
      description =
          "Run so many points between the ends too, by chance, and tell at how many every floor"
              + " stays dry.")
  private Optional<Integer> samples = Optional.empty();

  @Option(
      names = "--seed",
      paramLabel = "S",
      description = "A whole number; the same one gives the same samples. Default: 1.")
  private Optional<Long> seed = Optional.empty();

  @Option(names = "--json", description = "Write the answer as JSON for other programs.")
  private boolean json;

  @Mixin private Threads threads = new Threads();

  @Spec private CommandSpec spec = CommandSpec.create();

  /** A command at this workplace. */
  public BandsCommand(Workplace workplace) {
    this.workplace = workplace;
  }

  @Override
  public Integer call() {
    Optional<Sampling> sampling = sampling();
    OneDrawing one = new OneDrawing(workplace, "bands", file, json);
    return one.judge(
        options, (installation, uncertain) -> answer(one, installation, uncertain, sampling));
  }

  private Optional<Sampling> sampling() {
    if (samples.isEmpty()) {
      if (seed.isPresent()) {
        throw new ParameterException(
            spec.commandLine(), "--seed says which samples; say how many with --samples");
      }
      return Optional.empty();
    }
    int number = samples.get();
    if (number < 1 || number > MOST_SAMPLES) {
      throw new ParameterException(
          spec.commandLine(),
          "'" + number + "' samples; it can be from 1 to " + MOST_SAMPLES + ", such as 500");
    }
    return Optional.of(new Sampling(number, seed.orElse(1L)));
  }

  private ExitCode answer(
      OneDrawing one,
      Installation installation,
      UncertainDrawing uncertain,
      Optional<Sampling> sampling)
      throws BaselineProblem {
    if (uncertain.values().isEmpty()) {
      return one.refuse(
          List.of(
              new Problem(
                  0,
                  0,
                  "",
                  "no value of this drawing carries a tolerance",
                  "write one behind a quantity, such as \"580 mm ± 5 mm\"; 'dryfloor check'"
                      + " answers a drawing that is exact")));
    }
    BandResult bands = bands(one, uncertain, sampling);
    Wording wording = options.wording(installation);
    one.tell(
        wording,
        () -> BandsReport.of(bands, uncertain.values(), wording, workplace.surface().ink()),
        json -> json.bands(file, wording, uncertain.values(), bands));
    return exitCode(bands);
  }

  private BandResult bands(OneDrawing one, UncertainDrawing uncertain, Optional<Sampling> sampling)
      throws BaselineProblem {
    try (WatchedProgress progress = one.progress()) {
      return workplace
          .analyst()
          .bands(new ReadAgain(uncertain, options::asked), sampling, threads.count(), progress);
    }
  }

  private static ExitCode exitCode(BandResult bands) {
    ExitCode worst =
        bands.bands().stream()
            .map(band -> ExitCode.of(BandWords.answer(band.worst().figures())))
            .reduce(ExitCode.FLOOR_DRY, ExitCode::worse);
    return bands.unsound().isEmpty() ? worst : worst.worse(ExitCode.NO_ANSWER);
  }
}
