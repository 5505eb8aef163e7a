package dryfloor.app.command;

import dryfloor.model.unit.QuantityKind;
import dryfloor.model.unit.QuantityText;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a time such as "72h" from the command line. */
final class UnattendedTime implements ITypeConverter<UnattendedTime.Seconds> {

  /** A time (s). */
  record Seconds(double seconds) {}

  @Override
  public Seconds convert(String text) {
    return switch (QuantityText.parse(QuantityKind.TIME, text)) {
      case QuantityText.Parsed.Value value -> positive(text, value.inside());
      case QuantityText.Parsed.Unfit unfit ->
          throw new TypeConversionException(unfit.found() + "; write " + unfit.wanted());
    };
  }

  private static Seconds positive(String text, double seconds) {
    if (seconds > 0) {
      return new Seconds(seconds);
    }
    throw new TypeConversionException("'" + text + "' is no time to be away; it must be above 0");
  }
}
