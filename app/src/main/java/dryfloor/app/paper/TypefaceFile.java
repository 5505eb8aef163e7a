package dryfloor.app.paper;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * The files of the typeface that the program brings along, without their table of ligatures. Nobody
 * misses a joined "fi" on a worksheet, text that is copied out of a PDF has its letters one by one,
 * and looking for ligatures takes an eighth of the time that a PDF takes.
 */
final class TypefaceFile {

  private static final String FOLDER = "/net/sf/jasperreports/fonts/dejavu/";

  /** The table of what stands in the place of what, as OpenType names it. */
  private static final int GLYPH_SUBSTITUTION = tag("GSUB");

  /** A name that means nothing to anybody: the table is passed over. */
  private static final int PASSED_OVER = tag("gsub");

  /** The head of the file, then one record of so many bytes for each table. */
  private static final int HEAD = 12;

  private static final int RECORD = 16;

  /** Where the head says how many tables there are. */
  private static final int COUNT = 4;

  private TypefaceFile() {}

  /** All of a file. */
  static byte[] read(String name) {
    try (InputStream stream =
        Optional.ofNullable(TypefaceFile.class.getResourceAsStream(FOLDER + name))
            .orElseThrow(() -> new IllegalStateException("the program lacks its " + name))) {
      return withoutLigatures(stream.readAllBytes());
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static byte[] withoutLigatures(byte[] file) {
    ByteBuffer tables = ByteBuffer.wrap(file);
    for (int i = 0; i < tables.getShort(COUNT); i++) {
      int record = HEAD + i * RECORD;
      if (tables.getInt(record) == GLYPH_SUBSTITUTION) {
        tables.putInt(record, PASSED_OVER);
      }
    }
    return file;
  }

  private static int tag(String name) {
    return ByteBuffer.wrap(name.getBytes(StandardCharsets.US_ASCII)).getInt();
  }
}
