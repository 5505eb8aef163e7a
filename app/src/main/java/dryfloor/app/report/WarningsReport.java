package dryfloor.app.report;

import dryfloor.analysis.practice.Warning;
import java.util.List;

/** What published rules and common practice have against a drawing. */
public final class WarningsReport {

  private WarningsReport() {}

  /** The whole report but for what everybody must take care of. */
  public static String of(List<Warning> warnings, Wording wording, Ink ink) {
    Lines lines = new Lines(ink);
    lines.add(ink.heading(wording.installation().name()));
    lines.paragraph(
        "",
        warnings.isEmpty()
            ? "No rule that is looked at has anything against this drawing."
            : warnings.size()
                + (warnings.size() == 1 ? " warning" : " warnings")
                + " from published rules and common practice. They say what experience has against"
                + " the drawing, whether or not a failure wets a floor.");
    lines.blank();
    WarningSentence sentence = new WarningSentence(wording);
    for (Warning warning : warnings) {
      lines.paragraph("  - ", "    ", sentence.of(warning) + " (" + warning.rule().source() + ")");
    }
    if (!warnings.isEmpty()) {
      lines.blank();
    }
    lines.paragraph(
        "",
        "Not looked at, as a drawing does not say it: joints where nobody sees them, falls of drains,"
            + " membranes and sealed passages, which socket hangs on which breaker.");
    return lines.text();
  }
}
