package dryfloor.app.drawing;

import dryfloor.app.text.LineBreaks;
import java.util.List;

/** How wide text becomes, estimated for the widest of the usual sans-serif typefaces. */
final class TextWidth {

  private TextWidth() {}

  static double of(String text, double size, Style style) {
    double bold =
        switch (style) {
          case TITLE,
              HEADING,
              NAME,
              FLOW_TEXT,
              WET_TEXT,
              CAUGHT_TEXT,
              DRY_TEXT,
              UNKNOWN_TEXT,
              STORY_TIME ->
              1.1;
          default -> 1;
        };
    return text.codePoints().mapToDouble(TextWidth::share).sum() * size * bold;
  }

  private static double share(int character) {
    if ("ijl.,:;'|!()[]/ ft-".indexOf(character) >= 0) {
      return 0.39;
    }
    if ("mwMW%@▲◐●–→".indexOf(character) >= 0) {
      return 0.98;
    }
    return Character.isUpperCase(character) || Character.isDigit(character) ? 0.69 : 0.61;
  }

  /** Text broken between words into lines not wider than this. */
  static List<String> broken(String text, double width, double size, Style style) {
    return LineBreaks.broken(text, width, line -> of(line, size, style));
  }
}
