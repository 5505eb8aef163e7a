package dryfloor.app.report;

import dryfloor.analysis.worksheet.SeverityScale;
import dryfloor.model.unit.QuantityKind;
import dryfloor.model.unit.QuantityText;

/** What people write for the lines of a {@link SeverityScale}. */
public sealed interface SeverityText {

  /** It is clear. */
  record Meant(SeverityScale scale) implements SeverityText {}

  /** It makes no sense; the complaint says what would. */
  record Refused(String complaint) implements SeverityText {}

  /**
   * Reads both lines.
   *
   * @param some water on floors up to which it is mopped up, such as {@code 10 L}; empty for the
   *     usual
   * @param much from which on it is a flood, such as {@code 100 L}; empty for the usual
   */
  static SeverityText of(String some, String much) {
    try {
      double first = volume(some, SeverityScale.USUAL.some());
      double second = volume(much, SeverityScale.USUAL.much());
      return first > 0 && second > first
          ? new Meant(new SeverityScale(first, second))
          : new Refused("both volumes must be above 0, and the second above the first");
    } catch (Unclear unclear) {
      return unclear.refused;
    }
  }

  private static double volume(String text, double usual) throws Unclear {
    if (text.isBlank()) {
      return usual;
    }
    return switch (QuantityText.parse(QuantityKind.VOLUME, text.strip())) {
      case QuantityText.Parsed.Value value -> value.inside();
      case QuantityText.Parsed.Unfit unfit ->
          throw new Unclear(new Refused(unfit.found() + "; write " + unfit.wanted()));
    };
  }

  /** What was written can't be read. */
  final class Unclear extends Exception {
    private static final long serialVersionUID = 1L;
    private final transient Refused refused;

    private Unclear(Refused refused) {
      super(refused.complaint());
      this.refused = refused;
    }
  }
}
