package dryfloor.app.report;

import java.util.List;

/** How phrases become sentences. */
final class Sentences {

  private Sentences() {}

  static String capital(String text) {
    return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }

  /** "a", "a and b", "a, b and c". */
  static String enumerate(List<String> phrases) {
    int last = phrases.size() - 1;
    return switch (phrases.size()) {
      case 0 -> "";
      case 1 -> phrases.getFirst();
      default -> String.join(", ", phrases.subList(0, last)) + " and " + phrases.get(last);
    };
  }
}
