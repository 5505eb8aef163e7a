package dryfloor.app.command;

import dryfloor.analysis.limit.Bounds;
import dryfloor.model.file.VisibleText;
import dryfloor.model.unit.QuantityKind;
import dryfloor.model.unit.QuantityText;
import java.util.Optional;
import java.util.OptionalDouble;
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
    return new Bounds(
        keep.map(text -> OptionalDouble.of(share(text))).orElse(OptionalDouble.empty()),
        salinity.length == 2 ? Optional.of(band()) : Optional.empty());
  }

  private double share(String text) {
    double share = read("--keep", QuantityKind.FRACTION, text);
    if (share > 1) {
      throw refused(
          "--keep: '" + VisibleText.of(text) + "' is more than there is; give at most 100 %");
    }
    return share;
  }

  private Bounds.Salinities band() {
    double least = read("--salinity", QuantityKind.SALINITY, salinity[0]);
    double most = read("--salinity", QuantityKind.SALINITY, salinity[1]);
    if (least >= most) {
      throw refused(
          "--salinity: there is nothing from '"
              + VisibleText.of(salinity[0])
              + "' to '"
              + VisibleText.of(salinity[1])
              + "'; give the lower first");
    }
    return new Bounds.Salinities(least, most);
  }

  private double read(String option, QuantityKind kind, String text) {
    return switch (QuantityText.parse(kind, text)) {
      case QuantityText.Parsed.Value value -> value.inside();
      case QuantityText.Parsed.Unfit unfit ->
          throw refused(option + ": " + unfit.found() + "; write " + unfit.wanted());
    };
  }

  private ParameterException refused(String complaint) {
    return new ParameterException(spec.commandLine(), complaint);
  }
}
