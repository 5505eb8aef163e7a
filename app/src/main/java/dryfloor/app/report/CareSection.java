package dryfloor.app.report;

/** What stands at the end of every report: what it is, and what can hurt somebody. */
final class CareSection {

  private CareSection() {}

  static void write(Wording wording, Lines lines) {
    lines.heading("Take care");
    for (Caution caution : new Cautions(wording).all()) {
      lines.paragraph(
          "  ", "    ", caution.topic() + ": " + caution.text() + " (" + caution.source() + ")");
    }
    lines.blank();
    lines.paragraph("", Cautions.STATEMENT);
  }
}
