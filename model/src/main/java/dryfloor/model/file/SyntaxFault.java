package dryfloor.model.file;

/** Where and why a text stops being JSON, and what would be right. */
final class SyntaxFault extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final int offset;
  private final String what;
  private final String remedy;

  private SyntaxFault(int offset, String what, String remedy) {
    super(what, null, false, false);
    this.offset = offset;
    this.what = what;
    this.remedy = remedy;
  }

  /**
   * A text that is no JSON.
   *
   * @param offset of the character where it shows, from 0
   * @param what is wrong
   * @param remedy what would be right
   */
  static SyntaxFault invalid(int offset, String what, String remedy) {
    return new SyntaxFault(offset, "not valid JSON: " + what, remedy);
  }

  /** A text that may be JSON, but more of it than any installation needs. */
  static SyntaxFault tooMuch(int offset, String what, String remedy) {
    return new SyntaxFault(offset, what, remedy);
  }

  static SyntaxFault endsTooEarly(int offset, String open) {
    return invalid(
        offset,
        "the file ends too early: " + open,
        "close every {, [ and \"; the end of the file may be lost, look for its backup");
  }

  String what() {
    return what;
  }

  String remedy() {
    return remedy;
  }

  /** Its place in the text that it was found in. */
  FilePlace placeIn(String text) {
    return FilePlace.inText(text, offset);
  }
}
