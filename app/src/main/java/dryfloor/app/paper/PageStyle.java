package dryfloor.app.paper;

import gg.jte.Content;
import gg.jte.TemplateOutput;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** How pages look: a style sheet of our own, in which nothing of a drawing stands. */
final class PageStyle implements Content {

  /** Left and right of a sheet, as the style sheet has it (mm). */
  static final double MARGIN = 14;

  /** Above and below what is printed, as the style sheet has it (mm). */
  static final double ABOVE_AND_BELOW = 30;

  /** So many digits tell a fingerprint from every other that anybody will meet. */
  private static final int TOLD = 16;

  private final String css;

  private PageStyle(String css) {
    this.css = css;
  }

  /** Phone, screen and printer, light and dark. */
  static PageStyle page() {
    return new PageStyle(read("page.css"));
  }

  /**
   * Sheets of paper of this size, each of which says at its foot for which drawing it was made: a
   * sheet that was taken out of the pile still does.
   *
   * @param cardLetters size of the letters on the emergency card (pt)
   */
  static PageStyle sheets(PaperSize size, Report.Drawing drawing, double cardLetters) {
    return new PageStyle(
        sized(size)
            + read("sheets.css")
            + foot(drawing)
            + "#emergency { font-size: %spt }\n".formatted(cardLetters));
  }

  /** Of the drawing only what can't steer a style sheet: digits, letters, dots, dashes. */
  private static String foot(Report.Drawing drawing) {
    String words =
        drawing.date()
            + ", drawing "
            + drawing.fingerprint().substring(0, Math.min(TOLD, drawing.fingerprint().length()))
            + ", "
            + drawing.program();
    return "@page { @bottom-left { content: \"%s\"; font-family: \"DejaVu Sans\"; font-size: 7pt;\n"
            .formatted(words.replaceAll("[^A-Za-z0-9., -]", " "))
        + "  color: #5b6770 } }\n";
  }

  /** Strips of marks on sheets of this size. */
  static PageStyle strips(PaperSize size) {
    return new PageStyle(sized(size) + read("strips.css"));
  }

  private static String sized(PaperSize size) {
    return "@page { size: %s }\n@page broad { size: %s landscape }\n.p-wide { width: %smm }\n"
        .formatted(size.word(), size.word(), size.height() - 2 * MARGIN);
  }

  private static String read(String file) {
    try (InputStream stream =
        Optional.ofNullable(PageStyle.class.getResourceAsStream(file))
            .orElseThrow(() -> new IllegalStateException("the program lacks its " + file))) {
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  @Override
  public void writeTo(TemplateOutput output) {
    output.writeContent(css);
  }
}
