package dryfloor.app.paper;

/** The sheets that printers have. */
public enum PaperSize {
  /** 210 × 297 mm. */
  A4("A4", 297),
  /** 8.5 × 11 in. */
  LETTER("letter", 279.4);

  private final String word;
  private final double height;

  PaperSize(String word, double height) {
    this.word = word;
    this.height = height;
  }

  /** As style sheets call it. */
  String word() {
    return word;
  }

  /** Height of the upright sheet (mm). */
  double height() {
    return height;
  }
}
