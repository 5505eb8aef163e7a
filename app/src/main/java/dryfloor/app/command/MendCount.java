package dryfloor.app.command;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** For how many failures mends are looked for, from 0 to 10: each takes half a minute and more. */
final class MendCount implements ITypeConverter<Integer> {

  private static final int MOST = 10;

  @Override
  public Integer convert(String text) {
    if (text.matches("[0-9]{1,2}") && Integer.parseInt(text) <= MOST) {
      return Integer.valueOf(text);
    }
    throw new TypeConversionException("'" + text + "' is no whole number from 0 to " + MOST);
  }
}
