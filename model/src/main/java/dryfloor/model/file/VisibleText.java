package dryfloor.model.file;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * Text from outside as it may be shown. Characters that nobody sees but a terminal or a page obeys
 * are spelled out by their number, as in {@code <U+001B>}.
 */
public final class VisibleText {

  private VisibleText() {}

  /** The text with line breaks and everything else that can't be seen spelled out. */
  public static String of(String text) {
    return spelledOut(text, c -> steers(c) || turns(c));
  }

  /** The text with only the marks spelled out that turn the direction of what follows them. */
  public static String withoutTurns(String text) {
    return spelledOut(text, VisibleText::turns);
  }

  /**
   * A text in JSON with the same marks as JSON writes any character by its number: whoever reads it
   * gets the very same names, whoever looks at it sees the marks.
   */
  public static String withoutTurnsInJson(String json) {
    if (json.codePoints().noneMatch(VisibleText::turns)) {
      return json;
    }
    StringBuilder seen = new StringBuilder();
    json.codePoints()
        .forEach(
            c -> {
              if (turns(c)) {
                seen.append("\\u%04X".formatted(c));
              } else {
                seen.appendCodePoint(c);
              }
            });
    return seen.toString();
  }

  /** The first so many places of a longer text, one less where that would halve a character. */
  static String first(String text, int places) {
    return text.substring(0, halves(text, places) ? places - 1 : places);
  }

  /** The last so many places of a longer text, one less where that would halve a character. */
  static String last(String text, int places) {
    int from = text.length() - places;
    return text.substring(halves(text, from) ? from + 1 : from);
  }

  private static boolean halves(String text, int at) {
    return Character.isSurrogatePair(text.charAt(at - 1), text.charAt(at));
  }

  /** Names the first character that has no place in a name, and says where it stands. */
  static Optional<String> firstUnfit(String text) {
    OptionalInt at = text.codePoints().filter(VisibleText::steers).findFirst();
    return at.isEmpty()
        ? Optional.empty()
        : Optional.of(
            code(at.getAsInt())
                + " at character "
                + (text.codePoints().takeWhile(c -> !steers(c)).count() + 1));
  }

  private static String spelledOut(String text, Question question) {
    if (text.codePoints().noneMatch(question::asked)) {
      return text;
    }
    StringBuilder seen = new StringBuilder();
    text.codePoints()
        .forEach(
            c -> {
              if (question.asked(c)) {
                seen.append('<').append(code(c)).append('>');
              } else {
                seen.appendCodePoint(c);
              }
            });
    return seen.toString();
  }

  private static String code(int character) {
    return "U+%04X".formatted(character);
  }

  /** Controls, line breaks, halves of characters and numbers that are no character. */
  private static boolean steers(int character) {
    return switch (Character.getType(character)) {
      case Character.CONTROL,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.SURROGATE ->
          true;
      default -> (character & 0xFFFE) == 0xFFFE || (character >= 0xFDD0 && character <= 0xFDEF);
    };
  }

  /**
   * Embeddings, overrides, isolates and marks of the Unicode Bidirectional Algorithm. A mark alone
   * turns nothing but what is next to it, and that is enough: with one at its end the name "tank 3"
   * before " 12 L" is read as 312 L.
   */
  private static boolean turns(int character) {
    return (character >= 0x202A && character <= 0x202E)
        || (character >= 0x2066 && character <= 0x2069)
        || character == 0x200E
        || character == 0x200F
        || character == 0x061C;
  }

  /** Asks something of a character. */
  private interface Question {
    boolean asked(int character);
  }
}
