package dryfloor.app.paper;

import java.io.IOException;
import java.util.Map;

/** Strips of marks as PDF, at true scale, to be cut out and held against the glass. */
public final class MarkStripPages {

  private MarkStripPages() {}

  /** The sheets; without marks one that says so. */
  public static byte[] of(Question question, PaperSize size) throws IOException {
    return PdfPages.write(
        HtmlPages.write(
            "strips.jte",
            Map.of(
                "strips",
                MarkStrips.of(question.wording(), question.marks(), size),
                "drawing",
                question.drawing(),
                "style",
                PageStyle.strips(size))),
        size,
        SheetFit.WIDEST.pictureShare());
  }
}
