package dryfloor.model.file;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Names, texts, numbers and bare words of a JSON text, and what can be wrong with them. */
final class SyntaxWords {

  /** The last ones are no JSON but are read, so that they can be told as wrong quantities. */
  private static final Set<String> BARE =
      Set.of("true", "false", "null", "NaN", "Infinity", "-Infinity", "INF", "+INF", "-INF");

  private static final Pattern NUMBER =
      Pattern.compile("-?(0|[1-9][0-9]*)(\\.[0-9]+)?([eE][-+]?[0-9]+)?");

  private static final Pattern LOOSE_NUMBER = Pattern.compile("([-+]?)0*([0-9]*)(?:\\.([0-9]*))?");

  private static final Pattern ESCAPE = Pattern.compile("\\\\([\"\\\\/bfnrt]|u[0-9a-fA-F]{4})");

  private static final String COMMENT = "#/";
  private static final String CURLY_QUOTES = "\u201c\u201d\u201e\u00ab\u00bb";
  private static final String SINGLE_QUOTES = "'`\u2018\u2019\u201a";
  private static final String END_OF_BARE = " \t\n\r,;:{}[]\"";
  private static final String END_OF_LOOSE = "\n\r,;:{}[]\"";
  private static final int SHOWN = 40;

  private SyntaxWords() {}

  /** Offset behind the text that begins with a quote here. */
  static int endOfQuoted(String text, int start) {
    Matcher escape = ESCAPE.matcher(text);
    int at = start + 1;
    int last = start + LocatedReader.LONGEST_TEXT;
    while (at < text.length() && text.charAt(at) != '"') {
      char c = text.charAt(at);
      if (c == '\n' || c == '\r') {
        throw unclosed(start);
      }
      if (at > last) {
        throw SyntaxFault.tooMuch(
            start,
            "a text of more than " + LocatedReader.LONGEST_TEXT + " characters",
            "write names and reasons short; look for a quote that is never closed");
      }
      if (c < ' ') {
        throw SyntaxFault.invalid(
            at, "a control character (U+%04X) in a text".formatted((int) c), "write a space");
      }
      if (c == '\\') {
        escape.region(at, text.length());
        if (!escape.lookingAt()) {
          String pair = text.substring(at, Math.min(at + 2, text.length()));
          throw SyntaxFault.invalid(
              at, pair + " in a text means nothing", "for a backslash write \\\\");
        }
        at = escape.end();
      } else {
        at++;
      }
    }
    if (at == text.length()) {
      int line = FilePlace.inText(text, start).line();
      throw SyntaxFault.endsTooEarly(
          at, "the text that begins on line " + line + " is never closed");
    }
    return at + 1;
  }

  private static SyntaxFault unclosed(int start) {
    return SyntaxFault.invalid(
        start, "the text that begins here has no closing quote on its line", "close it with \"");
  }

  /** Offset behind the number or word that begins here. */
  static int endOfBare(String text, int start) {
    int end = end(text, start, END_OF_BARE);
    String word = text.substring(start, end);
    boolean number = NUMBER.matcher(word).matches();
    if (number && word.length() > LocatedReader.LONGEST_NUMBER) {
      throw SyntaxFault.tooMuch(
          start,
          "a number of more than " + LocatedReader.LONGEST_NUMBER + " digits",
          "no quantity needs more than a few");
    }
    String rest = text.substring(end, end(text, end, END_OF_LOOSE)).strip();
    boolean quantity = number && !rest.isEmpty() && COMMENT.indexOf(rest.charAt(0)) < 0;
    if (BARE.contains(word) || (number && !quantity)) {
      return end;
    }
    throw strange(text, start)
        .or(() -> quantity ? Optional.empty() : strangeNumber(start, word))
        .orElseGet(() -> unquoted(text, start, word));
  }

  private static Optional<SyntaxFault> strangeNumber(int start, String word) {
    Matcher loose = LOOSE_NUMBER.matcher(word);
    if (!loose.matches() || word.chars().noneMatch(Character::isDigit)) {
      return Optional.empty();
    }
    String whole = loose.group(2).isEmpty() ? "0" : loose.group(2);
    String decimals =
        loose.group(3) == null || loose.group(3).isEmpty() ? "" : "." + loose.group(3);
    String right = (loose.group(1).equals("-") ? "-" : "") + whole + decimals;
    return Optional.of(
        SyntaxFault.invalid(
            start, "the number " + word + " is not written as JSON wants it", "write " + right));
  }

  private static SyntaxFault unquoted(String text, int start, String word) {
    String lower = word.toLowerCase(Locale.ROOT);
    if (lower.equals("true") || lower.equals("false")) {
      return SyntaxFault.invalid(start, "'" + word + "' has capitals", "write " + lower);
    }
    String all = text.substring(start, end(text, start, END_OF_LOOSE)).strip();
    return SyntaxFault.invalid(
        start,
        shown(all) + " stands without quotes",
        "write \""
            + shown(all)
            + "\"; only numbers without a unit, true, false and null go without");
  }

  /** What stands where the file begins. */
  static SyntaxFault noBeginning(String text, int at) {
    return strange(text, at)
        .orElseGet(
            () ->
                SyntaxFault.invalid(
                    at,
                    "the file begins with "
                        + shown(text.substring(at, end(text, at, "\n\r")).strip()),
                    "an installation file begins { \"dryfloor\": 1, ..."));
  }

  /** What stands where the quoted name of a field belongs. */
  static SyntaxFault noName(String text, int at) {
    char c = text.charAt(at);
    if (c == ',') {
      return SyntaxFault.invalid(at, "there is a comma too many", "delete it");
    }
    String word = text.substring(at, end(text, at, END_OF_BARE));
    return strange(text, at)
        .orElseGet(
            () ->
                word.isEmpty() || Character.isDigit(c)
                    ? SyntaxFault.invalid(
                        at,
                        "the name of a field is missing before '"
                            + shown(text.substring(at, at + Math.max(1, word.length())))
                            + "'",
                        "a name in quotes and a colon; decimals take a point, not a comma")
                    : SyntaxFault.invalid(
                        at,
                        "the name " + shown(word) + " stands without quotes",
                        "write \"" + shown(word) + "\""));
  }

  /** What stands between two items instead of a comma. */
  static SyntaxFault noComma(String text, int at) {
    char c = text.charAt(at);
    if (c == ';') {
      return SyntaxFault.invalid(at, "a semicolon stands here", "a comma");
    }
    return strange(text, at)
        .orElseGet(
            () ->
                SyntaxFault.invalid(
                    at,
                    "a comma is missing before this",
                    "a comma between one item and the next; or a closing quote or bracket is missing"));
  }

  /** Comments and quotes of other kinds, wherever they stand. */
  private static Optional<SyntaxFault> strange(String text, int at) {
    char c = text.charAt(at);
    if (COMMENT.indexOf(c) >= 0) {
      return Optional.of(
          SyntaxFault.invalid(at, "a comment stands here", "delete it: JSON has no comments"));
    }
    if (CURLY_QUOTES.indexOf(c) >= 0) {
      return Optional.of(
          SyntaxFault.invalid(at, "a curly quote stands here", "the straight one, \""));
    }
    if (SINGLE_QUOTES.indexOf(c) >= 0) {
      return Optional.of(
          SyntaxFault.invalid(at, "a single quote stands here", "the double one, \""));
    }
    return Optional.empty();
  }

  private static int end(String text, int start, String stops) {
    int end = start;
    while (end < text.length() && stops.indexOf(text.charAt(end)) < 0) {
      end++;
    }
    return end;
  }

  private static String shown(String words) {
    return words.length() <= SHOWN ? words : VisibleText.first(words, SHOWN) + " ...";
  }
}
