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

  String pathOf(String field) {
    return path.isEmpty() ? field : path + "." + field;
  }
}
