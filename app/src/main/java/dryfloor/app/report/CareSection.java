package dryfloor.app.report;

import java.util.List;

/** What stands at the end of every answer: what it is, and what can hurt somebody. */
public final class CareSection {

  private CareSection() {}

  /** Cautions about all these installations, each caution once. */
  public static String of(List<Wording> wordings, Ink ink) {
    Lines lines = new Lines(ink);
    write(wordings, lines);
    return lines.text();
  }

  static void write(List<Wording> wordings, Lines lines) {
    lines.heading("Take care");
    wordings.stream()
        .flatMap(wording -> new Cautions(wording).all().stream())
        .distinct()
        .forEach(
            caution ->
                lines.paragraph(
                    "  ",
                    "    ",
                    caution.topic() + ": " + caution.text() + " (" + caution.source() + ")"));
    lines.blank();
    lines.paragraph("", Cautions.STATEMENT);
  }
}
