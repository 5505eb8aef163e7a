package dryfloor.app.command;

import dryfloor.app.report.Wording;
import dryfloor.model.Conditions;
import dryfloor.model.Installation;
import dryfloor.model.unit.Units;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Options of every command that answers. */
final class AnswerOptions {

  @Option(
      names = "--units",
      paramLabel = "metric|us",
      converter = ReaderUnits.class,
      completionCandidates = ReaderUnits.class,
      description = "Units to answer in: metric (mm, L) or us (in, gal). Default: metric.")
  private Units units = Units.METRIC;

  @Option(
      names = "--away",
      paramLabel = "TIME",
      converter = UnattendedTime.class,
      description =
          "Time until somebody comes, such as 72h or 14d, in place of the one in the drawing.")
  private Optional<UnattendedTime.Seconds> away = Optional.empty();

  Wording wording(Installation installation) {
    return Wording.of(installation, units);
  }

  /** The installation as it is asked about. */
  Installation asked(Installation drawn) {
    return away.map(time -> withAway(drawn, time.seconds())).orElse(drawn);
  }

  private static Installation withAway(Installation drawn, double away) {
    return drawn.withConditions(new Conditions(drawn.conditions().celsius(), away));
  }
}
