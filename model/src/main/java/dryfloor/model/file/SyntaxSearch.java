package dryfloor.model.file;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/**
 * Finds where a text stops being JSON (RFC 8259) and says why, for somebody who typed it. It is
 * asked only after the parser has refused the text, and takes nothing over from it.
 */
final class SyntaxSearch {

  private final String text;
  private int at;

  /** Offsets of the brackets that are open, the innermost first. */
  private final Deque<Integer> open = new ArrayDeque<>();

  private SyntaxSearch(String text) {
    this.text = text;
  }

  /** The first fault; none in a text that is JSON. */
  static Optional<SyntaxFault> firstFault(String text) {
    SyntaxSearch search = new SyntaxSearch(text);
    try {
      search.value("at the beginning");
      search.space();
      return search.at < text.length()
          ? Optional.of(search.fault("there is text after the end", "remove it"))
          : Optional.empty();
    } catch (SyntaxFault fault) {
      return Optional.of(fault);
    }
  }

  private void value(String where) {
    switch (next()) {
      case '{' -> structure();
      case '[' -> sequence();
      case '"' -> at = SyntaxWords.endOfQuoted(text, at);
      case '}', ']', ',', ':' ->
          throw fault("a value is missing " + where, "a text in quotes, a number, { or [");
      default -> {
        if (open.isEmpty()) {
          throw SyntaxWords.noBeginning(text, at);
        }
        at = SyntaxWords.endOfBare(text, at);
      }
    }
  }

  private void structure() {
    opened();
    if (next() == '}') {
      at++;
    } else {
      do {
        member();
      } while (goesOn('}'));
    }
    open.pop();
  }

  private void opened() {
    if (open.size() == LocatedReader.DEEPEST_NESTING) {
      throw SyntaxFault.tooMuch(
          at,
          "more than " + LocatedReader.DEEPEST_NESTING + " levels of nesting",
          "an installation needs seven levels; look for brackets that are never closed");
    }
    open.push(at++);
  }

  private void member() {
    if (next() != '"') {
      throw SyntaxWords.noName(text, at);
    }
    int start = at;
    at = SyntaxWords.endOfQuoted(text, at);
    String name = text.substring(start, at);
    if (next() != ':') {
      throw fault("no colon follows the name " + name, "write " + name + ": and then its value");
    }
    at++;
    value("after " + name + ":");
  }

  private void sequence() {
    opened();
    if (next() == ']') {
      at++;
    } else {
      do {
        value("in this list");
      } while (goesOn(']'));
    }
    open.pop();
  }

  /** Steps over the comma before another item, or over the bracket after the last. */
  private boolean goesOn(char bracket) {
    char c = next();
    if (c == bracket) {
      at++;
      return false;
    }
    if (c == '}' || c == ']') {
      throw fault(
          "'" + c + "' closes nothing, because " + innermost() + " is still open",
          "write " + bracket + " before it, or look for a bracket too many");
    }
    if (c != ',') {
      throw SyntaxWords.noComma(text, at);
    }
    int comma = at++;
    if (next() == bracket) {
      at = comma;
      throw fault("a comma stands before the closing " + bracket, "delete the comma");
    }
    return true;
  }

  /** The next character that is no space. */
  private char next() {
    space();
    if (at == text.length()) {
      throw SyntaxFault.endsTooEarly(
          at, open.isEmpty() ? "it holds nothing" : innermost() + " is never closed");
    }
    return text.charAt(at);
  }

  private void space() {
    while (at < text.length() && " \t\n\r".indexOf(text.charAt(at)) >= 0) {
      at++;
    }
  }

  private String innermost() {
    int offset = open.element();
    return "the " + text.charAt(offset) + " on line " + FilePlace.inText(text, offset).line();
  }

  private SyntaxFault fault(String what, String remedy) {
    return SyntaxFault.invalid(at, what, remedy);
  }
}
