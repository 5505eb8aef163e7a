package dryfloor.app.command;

import dryfloor.analysis.worksheet.SeverityScale;
import dryfloor.app.report.SeverityText;
import java.util.List;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the two lines of the scale of severity, such as "10L,100L". */
final class SeverityLines implements ITypeConverter<SeverityScale> {

  @Override
  public SeverityScale convert(String text) {
    List<String> lines = List.of(text.split(",", -1));
    if (lines.size() != 2 || lines.stream().anyMatch(String::isBlank)) {
      throw new TypeConversionException(
          "'" + text + "' are not two volumes; write them like 10L,100L");
    }
    return switch (SeverityText.of(lines.getFirst(), lines.getLast())) {
      case SeverityText.Meant meant -> meant.scale();
      case SeverityText.Refused refused ->
          throw new TypeConversionException("'" + text + "': " + refused.complaint());
    };
  }
}
