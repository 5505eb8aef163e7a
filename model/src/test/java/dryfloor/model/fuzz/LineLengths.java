package dryfloor.model.fuzz;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** How many characters each line of a file has. Lines end with LF, CR LF or CR alone. */
final class LineLengths {

  private final int[] lengths;

  private LineLengths(int[] lengths) {
    this.lengths = lengths;
  }

  /** Like the reader, without the mark at the beginning that some editors write. */
  static LineLengths of(byte[] input) {
    String text = new String(input, StandardCharsets.UTF_8);
    int[] lengths = new int[text.length() + 1];
    int lines = 0;
    int start = text.startsWith("\ufeff") ? 1 : 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean secondHalf = c == '\n' && i > 0 && text.charAt(i - 1) == '\r';
      if (!secondHalf && (c == '\n' || c == '\r')) {
        lengths[lines++] = i - start;
      }
      if (c == '\n' || c == '\r') {
        start = i + 1;
      }
    }
    lengths[lines++] = text.length() - start;
    return new LineLengths(Arrays.copyOf(lengths, lines));
  }

  /** Whether a place, both counted from 1, is in the file or right behind the end of a line. */
  boolean hold(int line, int column) {
    return line >= 1 && line <= lengths.length && column >= 1 && column <= lengths[line - 1] + 1;
  }
}
