package dryfloor.analysis.band;

import java.util.Comparator;
import java.util.List;

/**
 * What one uncertain value does to one failure if it alone goes from end to end, all others being
 * as drawn.
 *
 * @param value which of them
 * @param verdicts by how many verdicts the best and the worst differ
 * @param onFloors by how much water on floors they differ (m³)
 * @param margin by how much margin they differ (m)
 */
public record Swing(int value, int verdicts, double onFloors, double margin) {

  /** What decides whether a floor is wet first, then what decides how much, then how nearly. */
  static final Comparator<Swing> MOST_FIRST =
      Comparator.comparingInt(Swing::verdicts)
          .thenComparingDouble(Swing::onFloors)
          .thenComparingDouble(Swing::margin)
          .reversed()
          .thenComparingInt(Swing::value);

  static Swing of(int value, List<Figures> figures) {
    List<Figures.Known> known =
        figures.stream()
            .filter(Figures.Known.class::isInstance)
            .map(Figures.Known.class::cast)
            .toList();
    return new Swing(
        value,
        (int) Range.of(figures.stream().map(f -> (double) f.group()).toList()).width(),
        Range.of(known.stream().map(Figures.Known::onFloors).toList()).width(),
        Range.of(known.stream().map(Figures.Known::margin).toList()).width());
  }

  /** Whether it changes anything that is told. */
  public boolean matters() {
    return verdicts > 0 || onFloors > 0 || margin > 0;
  }
}
