package dryfloor.app.command;

import dryfloor.app.paper.PaperSize;
import java.util.Locale;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a size of paper in any spelling. */
final class PaperSizeName implements ITypeConverter<PaperSize> {

  @Override
  public PaperSize convert(String text) {
    return switch (text.toLowerCase(Locale.ROOT)) {
      case "a4" -> PaperSize.A4;
      case "letter" -> PaperSize.LETTER;
      default ->
          throw new TypeConversionException(
              "'" + text + "' is no paper size; it can be a4 or letter");
    };
  }
}
