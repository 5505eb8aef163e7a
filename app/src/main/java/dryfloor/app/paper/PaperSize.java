package dryfloor.app.paper;

/** The sheets that printers have. */
public enum PaperSize {
  /** 210 × 297 mm. */
  A4("A4", 210, 297),
  /** 8.5 × 11 in. */
  LETTER("letter", 215.9, 279.4);

  private final String word;
  private final double width;
  private final double height;

  PaperSize(String word, double width, double height) {
    this.word = word;
    this.width = width;
    this.height = height;
  }

  /** As style sheets call it. */
  String word() {
    return word;
  }

  /** Width of the upright sheet (mm). */
  double width() {
    return width;
  }

  /** Height of the upright sheet (mm). */
  double height() {
    return height;
  }
}
