package dryfloor.app.command;

import dryfloor.analysis.limit.Bounds;
import dryfloor.app.report.BoundsText;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What no failure may do within a limit, beyond wetting a floor. */
final class BoundsOptions {

  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec = CommandSpec.create();

  @Option(
      names = "--keep",
      paramLabel = "SHARE",
      description =
          "Nor may a display, refugium, raceway or quarantine tank end with less than this share of"
              + " its water, such as '80 %%'.")
  private Optional<String> keep = Optional.empty();

  @Option(
      names = "--salinity",
      arity = "2",
      paramLabel = "SALINITY",
      description =
          "Nor may one end less or more salty than this if it is not today, such as '33 g/kg'"
              + " '37 g/kg'.")
  private String[] salinity = {};

  /** As the user gave them. */
  Bounds bounds() {
    boolean band = salinity.length == 2;
    return switch (BoundsText.of(
        keep.orElse(""), band ? salinity[0] : "", band ? salinity[1] : "")) {
      case BoundsText.Meant meant -> meant.bounds();
      case BoundsText.Refused refused ->
          throw new ParameterException(
              spec.commandLine(), option(refused.part()) + ": " + refused.complaint());
    };
  }

  private static String option(BoundsText.Part part) {
    return switch (part) {
      case KEEP -> "--keep";
      case SALINITY -> "--salinity";
    };
  }
}
