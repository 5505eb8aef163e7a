package dryfloor.app.command;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** How many failures to work on at once, from 1 to 64: each takes memory. */
final class ThreadCount implements ITypeConverter<Integer> {

  static final int MOST = 64;

  @Override
  public Integer convert(String text) {
    if (text.matches("[1-9][0-9]?") && Integer.parseInt(text) <= MOST) {
      return Integer.valueOf(text);
    }
    throw new TypeConversionException("'" + text + "' is no whole number from 1 to " + MOST);
  }
}
