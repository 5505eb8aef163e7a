package dryfloor.app.report;

import java.util.List;

/** How phrases become sentences. */
public final class Sentences {

  private Sentences() {}

  /** With a capital at the beginning. */
  public static String capital(String text) {
    return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }

  /** To go on with within a sentence: without a capital, unless the word is all capitals. */
  public static String goingOn(String text) {
    return text.length() < 2 || Character.isUpperCase(text.charAt(1))
        ? text
        : Character.toLowerCase(text.charAt(0)) + text.substring(1);
  }

  /** "a", "a and b", "a, b and c". */
  public static String enumerate(List<String> phrases) {
    int last = phrases.size() - 1;
    return switch (phrases.size()) {
      case 0 -> "";
      case 1 -> phrases.getFirst();
      default -> String.join(", ", phrases.subList(0, last)) + " and " + phrases.get(last);
    };
  }
}
