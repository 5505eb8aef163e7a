package dryfloor.app.text;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.regex.Pattern;

/** Breaks text between words, but never between a number and its unit. */
public final class LineBreaks {

  private static final Pattern NUMBER = Pattern.compile("\\(?[-+−±]?[0-9.]+");

  private LineBreaks() {}

  /**
   * Lines not wider than this, save for single words that are.
   *
   * @param width of a text, in the unit of {@code widest}
   */
  public static List<String> broken(String text, double widest, ToDoubleFunction<String> width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String piece : pieces(text)) {
      String longer = line.isEmpty() ? piece : line + " " + piece;
      if (!line.isEmpty() && width.applyAsDouble(longer) > widest) {
        lines.add(line.toString());
        line = new StringBuilder(piece);
      } else {
        line = new StringBuilder(longer);
      }
    }
    lines.add(line.toString());
    return lines;
  }

  /** Words, a number and what follows it being one. */
  private static List<String> pieces(String text) {
    List<String> pieces = new ArrayList<>();
    for (String word : text.split(" ", -1)) {
      boolean unit = !pieces.isEmpty() && NUMBER.matcher(pieces.getLast()).matches();
      if (unit) {
        pieces.add(pieces.removeLast() + " " + word);
      } else {
        pieces.add(word);
      }
    }
    return pieces;
  }
}
