package dryfloor.app.view;

import java.util.Locale;

/** The name that a file is offered to be written under. */
final class SuggestedName {

  private SuggestedName() {}

  /**
   * After the drawing's file, or after the drawing where there is none.
   *
   * @param part what of it is written, as the id of a failure; empty for all of it
   */
  static String of(DrawingWindow window, String part, FileQuestions.Kind kind) {
    String name =
        window
            .file()
            .path()
            .map(path -> String.valueOf(path.getFileName()).replaceFirst("\\.json$", ""))
            .orElseGet(() -> plain(window.drawing().name()));
    String middle = part.isEmpty() ? "" : "." + part;
    return name + middle + "." + kind.ending();
  }

  /** A name that every disk takes. */
  private static String plain(String name) {
    String letters =
        name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("^-|-$", "");
    return letters.isEmpty() ? "drawing" : letters.substring(0, Math.min(60, letters.length()));
  }
}
