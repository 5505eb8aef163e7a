package dryfloor.analysis.band;

import java.util.Comparator;
import java.util.List;

/**
 * What one uncertain value does to all failures if it alone goes from end to end.
 *
 * @param value which of them
 * @param verdicts for how many failures the verdict changes
 * @param onFloors by how much the water on floors changes, all failures added (m³)
 * @param margin by how much the margin changes where it changes most (m)
 */
public record Weight(int value, int verdicts, double onFloors, double margin) {

  static final Comparator<Weight> MOST_FIRST =
      Comparator.comparingInt(Weight::verdicts)
          .thenComparingDouble(Weight::onFloors)
          .thenComparingDouble(Weight::margin)
          .reversed()
          .thenComparingInt(Weight::value);

  static Weight of(int value, List<Band> bands) {
    List<Swing> swings =
        bands.stream()
            .flatMap(band -> band.swings().stream())
            .filter(swing -> swing.value() == value)
            .toList();
    return new Weight(
        value,
        (int) swings.stream().filter(swing -> swing.verdicts() > 0).count(),
        swings.stream().mapToDouble(Swing::onFloors).sum(),
        swings.stream().mapToDouble(Swing::margin).max().orElse(0));
  }
}
