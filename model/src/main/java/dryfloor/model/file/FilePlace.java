package dryfloor.model.file;

/**
 * Where something stands in a file.
 *
 * @param line from 1
 * @param column from 1
 * @param path as in {@code runs[2].parts[0].curve[1]}; empty for the file as a whole
 */
record FilePlace(int line, int column, String path) {

  static final FilePlace WHOLE_FILE = new FilePlace(1, 1, "");

  /** The place of the character at this offset from 0; lines end as they do in any editor. */
  static FilePlace inText(String text, int offset) {
    int line = 1;
    int start = 0;
    for (int i = 0; i < offset; i++) {
      char c = text.charAt(i);
      boolean halfOfABreak = c == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n';
      if (c == '\n' || (c == '\r' && !halfOfABreak)) {
        line++;
        start = i + 1;
      }
    }
    return new FilePlace(line, offset - start + 1, "");
  }

  String pathOf(String field) {
    return path.isEmpty() ? field : path + "." + field;
  }
}
