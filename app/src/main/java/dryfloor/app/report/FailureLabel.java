package dryfloor.app.report;

import dryfloor.analysis.failure.Failure;
import dryfloor.model.Installation;

/** Stands in for the names of failures. */
public final class FailureLabel {
  private FailureLabel() {}

  public static String id(Failure failure) {
    return failure
        .toString()
        .replaceAll("([a-z])([A-Z])", "$1-$2")
        .replaceAll("[a-z]+[0-9]*=", "")
        .replaceAll("[\\[\\], ]+", ".")
        .replaceAll("\\.$", "")
        .toLowerCase(java.util.Locale.ROOT);
  }

  public static String name(Failure failure, Installation installation) {
    Names names = Names.of(installation);
    String text = failure.getClass().getSimpleName().replaceAll("([a-z])([A-Z])", "$1 $2");
    StringBuilder all =
        new StringBuilder(text.charAt(0) + text.substring(1).toLowerCase(java.util.Locale.ROOT));
    java.util.Arrays.stream(failure.getClass().getRecordComponents())
        .forEach(
            c -> {
              try {
                all.append(", ").append(names.of(String.valueOf(c.getAccessor().invoke(failure))));
              } catch (ReflectiveOperationException e) {
                throw new IllegalStateException(e);
              }
            });
    return all.toString();
  }

  public static boolean hidden(Failure failure) {
    return failure instanceof Failure.SiphonBreakBlocked;
  }
}
