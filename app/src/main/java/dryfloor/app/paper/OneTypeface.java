package dryfloor.app.paper;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;
import org.jspecify.annotations.Nullable;

/**
 * Answers every search for a typeface with the one that the program brings along. A PDF is then the
 * same on every machine, and nothing looks through the machine's own typefaces or keeps a list of
 * them there.
 */
final class OneTypeface implements FontMapper {

  private final TrueTypeFont typeface;

  private OneTypeface(TrueTypeFont typeface) {
    this.typeface = typeface;
  }

  /** The typeface in a file of the program. */
  static OneTypeface of(String file) {
    try {
      return new OneTypeface(
          new TTFParser().parse(new RandomAccessReadBuffer(TypefaceFile.read(file))));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  @Override
  public FontMapping<TrueTypeFont> getTrueTypeFont(
      String name, @Nullable PDFontDescriptor description) {
    return new FontMapping<>(typeface, true);
  }

  @Override
  public FontMapping<FontBoxFont> getFontBoxFont(
      String name, @Nullable PDFontDescriptor description) {
    return new FontMapping<>(typeface, true);
  }

  @Override
  public CIDFontMapping getCIDFont(
      String name, @Nullable PDFontDescriptor description, @Nullable PDCIDSystemInfo system) {
    return new CIDFontMapping(null, typeface, true);
  }
}
