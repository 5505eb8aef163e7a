package dryfloor.analysis.band;

import java.util.Collection;

/** From the smallest to the largest of some figures. */
public record Range(double from, double to) {

  static Range of(Collection<Double> figures) {
    return new Range(
        figures.stream().mapToDouble(Double::doubleValue).min().orElse(Double.NaN),
        figures.stream().mapToDouble(Double::doubleValue).max().orElse(Double.NaN));
  }

  /** How far apart; 0 where there are no figures. */
  public double width() {
    return to >= from ? to - from : 0;
  }
}
