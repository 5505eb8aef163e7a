package dryfloor.app.report;

import dryfloor.analysis.limit.Bounds;
import dryfloor.model.file.VisibleText;
import dryfloor.model.unit.QuantityKind;
import dryfloor.model.unit.QuantityText;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What people write for {@link Bounds}, and how it is told back to them. */
public sealed interface BoundsText {

  /** What is asked about. */
  enum Part {
    /** The share of their water that vessels keep. */
    KEEP,
    /** The band of salinities. */
    SALINITY
  }

  /** It is clear. */
  record Meant(Bounds bounds) implements BoundsText {}

  /** It makes no sense; the complaint says what would. */
  record Refused(Part part, String complaint) implements BoundsText {}

  /**
   * Reads both.
   *
   * @param keep share, such as {@code 80 %}; empty where nothing is asked
   * @param leastSalinity such as {@code 33 g/kg}; both this and the most are empty where nothing is
   *     asked
   * @param mostSalinity such as {@code 37 g/kg}
   */
  static BoundsText of(String keep, String leastSalinity, String mostSalinity) {
    try {
      return new Meant(new Bounds(share(keep), band(leastSalinity, mostSalinity)));
    } catch (Unclear unclear) {
      return unclear.refused;
    }
  }

  /** What is asked beyond dry floors, a sentence for each; none where nothing is. */
  static List<String> sentences(Bounds bounds, Wording wording) {
    String lived =
        "And while no display, refugium, raceway or quarantine tank that does not today ends ";
    Optional<String> kept =
        bounds.keeps().isPresent()
            ? Optional.of(
                lived
                    + "with less than "
                    + Math.round(bounds.keeps().getAsDouble() * 100)
                    + " % of its water.")
            : Optional.empty();
    Optional<String> salted =
        bounds
            .salinity()
            .map(
                band ->
                    lived
                        + "outside of "
                        + wording.amounts().salinity(band.least())
                        + " to "
                        + wording.amounts().salinity(band.most())
                        + ".");
    return List.of(kept, salted).stream().flatMap(Optional::stream).toList();
  }

  private static OptionalDouble share(String text) {
    if (text.isBlank()) {
      return OptionalDouble.empty();
    }
    double share = read(Part.KEEP, QuantityKind.FRACTION, text);
    if (share > 1) {
      throw new Unclear(
          Part.KEEP, "'" + VisibleText.of(text) + "' is more than there is; give at most 100 %");
    }
    return OptionalDouble.of(share);
  }

  private static Optional<Bounds.Salinities> band(String least, String most) {
    if (least.isBlank() && most.isBlank()) {
      return Optional.empty();
    }
    if (least.isBlank() || most.isBlank()) {
      throw new Unclear(
          Part.SALINITY, "one end of the band is missing; give both, such as 33 g/kg and 37 g/kg");
    }
    double from = read(Part.SALINITY, QuantityKind.SALINITY, least);
    double to = read(Part.SALINITY, QuantityKind.SALINITY, most);
    if (from >= to) {
      throw new Unclear(
          Part.SALINITY,
          "there is nothing from '"
              + VisibleText.of(least)
              + "' to '"
              + VisibleText.of(most)
              + "'; give the lower first");
    }
    return Optional.of(new Bounds.Salinities(from, to));
  }

  private static double read(Part part, QuantityKind kind, String text) {
    return switch (QuantityText.parse(kind, text)) {
      case QuantityText.Parsed.Value value -> value.inside();
      case QuantityText.Parsed.Unfit unfit ->
          throw new Unclear(part, unfit.found() + "; write " + unfit.wanted());
    };
  }

  /** On the way out of reading. */
  final class Unclear extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final transient Refused refused;

    private Unclear(Part part, String complaint) {
      super(complaint);
      refused = new Refused(part, complaint);
    }
  }
}
