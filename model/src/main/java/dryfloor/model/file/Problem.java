package dryfloor.model.file;

/**
 * Something wrong in a file: where, what, and what would be right.
 *
 * @param line from 1
 * @param column from 1
 * @param path as in {@code runs[2].parts[0].curve[1]}; empty for the file as a whole
 * @param message what is wrong
 * @param remedy what would be right
 */
public record Problem(int line, int column, String path, String message, String remedy) {

  /** On one line, as a compiler would say it. */
  @Override
  public String toString() {
    String where = path.isEmpty() ? "" : path + ": ";
    return "line " + line + ", column " + column + ": " + where + message + "; " + remedy;
  }
}
