package dryfloor.app.command;

import dryfloor.analysis.worksheet.SeverityScale;
import dryfloor.model.unit.QuantityKind;
import dryfloor.model.unit.QuantityText;
import java.util.List;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the two lines of the scale of severity, such as "10L,100L". */
final class SeverityLines implements ITypeConverter<SeverityScale> {

  @Override
  public SeverityScale convert(String text) {
    List<String> lines = List.of(text.split(",", -1));
    if (lines.size() != 2) {
      throw new TypeConversionException(
          "'" + text + "' are not two volumes; write them like 10L,100L");
    }
    double some = volume(lines.getFirst());
    double much = volume(lines.getLast());
    if (!(some > 0) || !(much > some)) {
      throw new TypeConversionException(
          "'" + text + "': both volumes must be above 0, and the second above the first");
    }
    return new SeverityScale(some, much);
  }

  private static double volume(String text) {
    return switch (QuantityText.parse(QuantityKind.VOLUME, text.strip())) {
      case QuantityText.Parsed.Value value -> value.inside();
      case QuantityText.Parsed.Unfit unfit ->
          throw new TypeConversionException(unfit.found() + "; write " + unfit.wanted());
    };
  }
}
