package dryfloor.app.command;

import dryfloor.model.unit.Units;
import java.util.Arrays;
import java.util.Iterator;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** The units to answer in, as they are typed: small letters, but capitals do no harm. */
final class ReaderUnits implements ITypeConverter<Units>, Iterable<String> {

  @Override
  public Units convert(String text) {
    return Arrays.stream(Units.values())
        .filter(units -> word(units).equalsIgnoreCase(text))
        .findFirst()
        .orElseThrow(
            () ->
                new TypeConversionException(
                    "'" + text + "' are no units to answer in; it can be " + choice()));
  }

  /** What a shell may offer. */
  @Override
  public Iterator<String> iterator() {
    return words().iterator();
  }

  private static String choice() {
    return words().collect(Collectors.joining(" or "));
  }

  private static Stream<String> words() {
    return Arrays.stream(Units.values()).map(ReaderUnits::word);
  }

  private static String word(Units units) {
    return units.name().toLowerCase(Locale.ROOT);
  }
}
