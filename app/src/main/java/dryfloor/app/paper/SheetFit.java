package dryfloor.app.paper;

import java.io.IOException;
import java.util.List;
import java.util.Map;

/**
 * How the owner's page and the emergency card go on one sheet each: the picture gives way to the
 * words, and the card has letters as large as there is room for. What has more to say than even
 * that takes goes on to a second sheet.
 *
 * @param pictureShare of the height of a sheet that a picture takes at most
 * @param cardLetters size of the letters on the emergency card (pt)
 */
record SheetFit(double pictureShare, double cardLetters) {

  private static final List<Double> SHARES = List.of(0.40, 0.34, 0.28, 0.22, 0.16);
  private static final List<Double> LETTERS = List.of(9.0, 8.0, 7.2, 6.5);

  /** Where there is room enough. */
  static final SheetFit WIDEST = new SheetFit(SHARES.getFirst(), LETTERS.getFirst());

  /** Tries from the largest on; only where things would stand is worked out, nothing is drawn. */
  static SheetFit of(Report report, PaperSize size) throws IOException {
    return new SheetFit(pictureShare(report, size), cardLetters(report, size));
  }

  private static double pictureShare(Report report, PaperSize size) throws IOException {
    for (double share : SHARES) {
      if (new SheetFit(share, LETTERS.getFirst()).fits(report, size, false)) {
        return share;
      }
    }
    return SHARES.getLast();
  }

  private static double cardLetters(Report report, PaperSize size) throws IOException {
    for (double letters : LETTERS) {
      if (new SheetFit(SHARES.getFirst(), letters).fits(report, size, true)) {
        return letters;
      }
    }
    return LETTERS.getLast();
  }

  private boolean fits(Report report, PaperSize size, boolean card) throws IOException {
    PageStyle style = PageStyle.sheets(size, report.drawing(), cardLetters);
    String page =
        HtmlPages.write("sheet.jte", Map.of("report", report, "card", card, "style", style));
    return PdfPages.count(page, size, pictureShare) == 1;
  }
}
