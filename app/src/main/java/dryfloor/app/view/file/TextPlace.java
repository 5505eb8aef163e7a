package dryfloor.app.view.file;

import dryfloor.model.file.Problem;

/**
 * A stretch of a text, as offsets of its characters from 0.
 *
 * @param start of its first character
 * @param end after its last one
 */
public record TextPlace(int start, int end) {

  /** What a problem is about: a whole text in quotes, a number, or one sign. */
  public static TextPlace of(String text, Problem problem) {
    int start = offset(text, problem.line(), problem.column());
    return new TextPlace(start, end(text, start));
  }

  /** The line of an offset, from 1. */
  public static int line(String text, int offset) {
    return 1 + (int) text.chars().limit(offset).filter(sign -> sign == '\n').count();
  }

  /** The column of an offset in its line, from 1. */
  public static int column(String text, int offset) {
    return offset - text.lastIndexOf('\n', offset - 1);
  }

  private static int offset(String text, int line, int column) {
    int start = 0;
    for (int passed = 1; passed < line; passed++) {
      int lineEnd = text.indexOf('\n', start);
      if (lineEnd < 0) {
        return text.length();
      }
      start = lineEnd + 1;
    }
    return Math.min(text.length(), start + Math.max(0, column - 1));
  }

  private static int end(String text, int start) {
    if (start >= text.length()) {
      return start;
    }
    return text.charAt(start) == '"' ? endOfQuotes(text, start) : endOfWord(text, start);
  }

  private static int endOfQuotes(String text, int start) {
    for (int i = start + 1; i < text.length() && text.charAt(i) != '\n'; i++) {
      if (text.charAt(i) == '\\') {
        i++;
      } else if (text.charAt(i) == '"') {
        return i + 1;
      }
    }
    return start + 1;
  }

  private static int endOfWord(String text, int start) {
    int end = start;
    while (end < text.length() && isOfWord(text.charAt(end))) {
      end++;
    }
    return Math.max(end, start + 1);
  }

  private static boolean isOfWord(char sign) {
    return Character.isLetterOrDigit(sign) || sign == '-' || sign == '+' || sign == '.';
  }
}
