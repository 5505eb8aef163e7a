package dryfloor.app.command;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a time such as "72h" from the command line. */
final class UnattendedTime implements ITypeConverter<UnattendedTime.Seconds> {

  private static final Pattern FORM = Pattern.compile("(\\d+(?:\\.\\d+)?) ?(s|min|h|d)");

  /** A time (s). */
  record Seconds(double seconds) {}

  @Override
  public Seconds convert(String text) {
    Matcher form = FORM.matcher(text);
    if (!form.matches()) {
      throw new TypeConversionException("'" + text + "' is no time; write one such as 72h or 14d");
    }
    double unit =
        switch (form.group(2)) {
          case "s" -> 1;
          case "min" -> 60;
          case "h" -> 3600;
          default -> 86400;
        };
    return new Seconds(Double.parseDouble(form.group(1)) * unit);
  }
}
