package dryfloor.app.paper;

import com.openhtmltopdf.bidi.support.ICUBidiReorderer;
import com.openhtmltopdf.bidi.support.ICUBidiSplitter;
import com.openhtmltopdf.extend.FSSupplier;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.render.PageBox;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.text.Bidi;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.locks.Lock;
import java.util.concurrent.locks.ReentrantLock;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.apache.pdfbox.pdmodel.font.FontMappers;

/**
 * Pages as PDF: tagged, so that they can be read aloud, and with their typefaces embedded. The same
 * templates as in HTML, under a style sheet for paper. Nothing is fetched from anywhere.
 */
public final class PdfPages {

  private static final String TYPEFACE = "DejaVu Sans";
  private static final int REGULAR = 400;
  private static final int BOLD = 700;
  private static final Set<FSFontUseCase> EVERYWHERE =
      EnumSet.of(FSFontUseCase.DOCUMENT, FSFontUseCase.SVG, FSFontUseCase.FALLBACK_FINAL);

  /** All of them read the one typeface, and reading it is no business for two at once. */
  private static final Lock ONE_AT_A_TIME = new ReentrantLock();

  /** Kept, since a logger that nobody keeps forgets that it is to be quiet. */
  private static final Logger WORKINGS = Logger.getLogger("org.apache.pdfbox");

  static {
    WORKINGS.setLevel(Level.OFF);
    XRLog.setLoggingEnabled(false);
    FontMappers.set(OneTypeface.of("DejaVuSans.ttf"));
  }

  private PdfPages() {}

  /** The report on sheets of this size. */
  public static byte[] of(Report report, PaperSize size) throws IOException {
    SheetFit fit = SheetFit.of(report, size);
    PageStyle style = PageStyle.sheets(size, report.drawing(), fit.cardLetters());
    Report fitting = report.withPictureSoHigh(fit.pictureHeight(size));
    return write(
        HtmlPages.write("report.jte", Map.of("report", fitting, "style", style)),
        size,
        fit.pictureShare());
  }

  /** Two versions of a drawing on sheets of this size. */
  public static byte[] of(Comparison comparison, PaperSize size) throws IOException {
    PageStyle style = PageStyle.sheets(size, comparison.present(), SheetFit.WIDEST.cardLetters());
    return write(
        HtmlPages.write("comparison.jte", Map.of("comparison", comparison, "style", style)),
        size,
        SheetFit.WIDEST.pictureShare());
  }

  /** A page as a PDF; pictures take no more than a share of the height of a sheet. */
  static byte[] write(String page, PaperSize size, double share) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ONE_AT_A_TIME.lock();
    try (BatikSVGDrawer pictures = new BatikSVGDrawer()) {
      sheets(page, size, share, pictures).toStream(bytes).run();
    } finally {
      ONE_AT_A_TIME.unlock();
    }
    return bytes.toByteArray();
  }

  /**
   * How much of the room between the margins of the sheet a page leaves free, from 0 to 1; nothing
   * where it does not go on one sheet.
   */
  static OptionalDouble spare(String page, PaperSize size, double share) throws IOException {
    ONE_AT_A_TIME.lock();
    try (BatikSVGDrawer pictures = new BatikSVGDrawer();
        PdfBoxRenderer renderer =
            sheets(page, size, share, pictures)
                .toStream(OutputStream.nullOutputStream())
                .buildPdfRenderer()) {
      renderer.layout();
      List<PageBox> all = renderer.getRootBox().getLayer().getPages();
      PageBox first = all.getFirst();
      double room = first.getBottom() - first.getTop();
      return all.size() == 1
          ? OptionalDouble.of((first.getBottom() - renderer.getRootBox().getHeight()) / room)
          : OptionalDouble.empty();
    } finally {
      ONE_AT_A_TIME.unlock();
    }
  }

  private static PdfRendererBuilder sheets(
      String page, PaperSize size, double share, BatikSVGDrawer pictures) {
    PdfRendererBuilder sheets = new PdfRendererBuilder();
    if (isWrittenFromTheRight(page)) {
      sheets
          .useUnicodeBidiSplitter(new ICUBidiSplitter.ICUBidiSplitterFactory())
          .useUnicodeBidiReorderer(new ICUBidiReorderer());
    }
    return sheets
        .useUnicodeLineBreaker(new LineBreaker())
        .usePdfUaAccessibility(true)
        .useExternalResourceAccessControl(
            (uri, kind) -> false, ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI)
        .useExternalResourceAccessControl(
            (uri, kind) -> false, ExternalResourceControlPriority.RUN_AFTER_RESOLVING_URI)
        .useFont(file("DejaVuSans.ttf"), TYPEFACE, REGULAR, FontStyle.NORMAL, true, EVERYWHERE)
        .useFont(file("DejaVuSans-Bold.ttf"), TYPEFACE, BOLD, FontStyle.NORMAL, true, EVERYWHERE)
        .addDOMMutator(new PicturesOnPaper(size, share))
        .useSVGDrawer(pictures)
        .withHtmlContent(page, null)
        .withProducer("Dryfloor");
  }

  /** Whether anything on the page is; to look for it line by line takes an eighth of the time. */
  private static boolean isWrittenFromTheRight(String page) {
    char[] signs = page.toCharArray();
    return Bidi.requiresBidi(signs, 0, signs.length);
  }

  private static FSSupplier<InputStream> file(String name) {
    return () -> new ByteArrayInputStream(TypefaceFile.read(name));
  }
}
