package dryfloor.app.paper;

import dryfloor.app.drawing.Elevation;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * How the owner's page and the emergency card go on one sheet each: the picture takes what the
 * words leave, and the card has letters as large as there is room for. What has more to say than
 * even that takes goes on to a second sheet.
 *
 * @param pictureShare of the height of a sheet that a picture takes at most
 * @param cardLetters size of the letters on the emergency card (pt)
 */
record SheetFit(double pictureShare, double cardLetters) {

  private static final double LARGEST_SHARE = 0.46;
  private static final double SMALLEST_SHARE = 0.16;

  /** Stays free for what is rounded. */
  private static final double CAUTION = 0.005;

  private static final List<Double> LETTERS = List.of(9.0, 8.0, 7.2, 6.5);

  /** Where there is room enough. */
  static final SheetFit WIDEST = new SheetFit(LARGEST_SHARE, LETTERS.getFirst());

  /** Only where things would stand is worked out, nothing is drawn. */
  static SheetFit of(Report report, PaperSize size) throws IOException {
    return new SheetFit(pictureShare(report, size), cardLetters(report, size));
  }

  /** Laid out once with the smallest picture, which may then grow by what is left. */
  private static double pictureShare(Report report, PaperSize size) throws IOException {
    OptionalDouble spare =
        new SheetFit(SMALLEST_SHARE, LETTERS.getFirst()).spare(report, size, false);
    double room = 1 - PageStyle.ABOVE_AND_BELOW / size.height();
    return Math.clamp(
        SMALLEST_SHARE + room * spare.orElse(0) - CAUTION, SMALLEST_SHARE, LARGEST_SHARE);
  }

  /** How high a picture for a page is to be drawn (points) to fill that across the whole sheet. */
  double pictureHeight(PaperSize size) {
    return pictureShare
        * size.height()
        / (size.width() - 2 * PageStyle.MARGIN)
        * Elevation.ON_A_PAGE;
  }

  private static double cardLetters(Report report, PaperSize size) throws IOException {
    for (double letters : LETTERS) {
      if (new SheetFit(LARGEST_SHARE, letters).spare(report, size, true).isPresent()) {
        return letters;
      }
    }
    return LETTERS.getLast();
  }

  private OptionalDouble spare(Report report, PaperSize size, boolean card) throws IOException {
    PageStyle style = PageStyle.sheets(size, report.drawing(), cardLetters);
    String page =
        HtmlPages.write("sheet.jte", Map.of("report", report, "card", card, "style", style));
    return PdfPages.spare(page, size, pictureShare);
  }
}
