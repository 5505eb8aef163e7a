package dryfloor.analysis.limit;

import java.util.List;
import java.util.Optional;

/**
 * The values of a property that are looked at: whole steps from a base.
 *
 * @param kind what they measure
 * @param base value of step 0, and what heights are told from (the bottom of the vessel)
 * @param step between two values
 * @param least first step
 * @param most last step
 * @param today the value as drawn, which may lie between two steps
 */
public record Scale(Kind kind, double base, double step, int least, int most, double today) {

  /** What the values of a property measure. */
  public enum Kind {
    /** Elevation (m), to 1 mm. */
    HEIGHT,
    /** Width of a bore (m), to 1 mm. */
    WIDTH,
    /** Volume (m³), to 0.1 L. */
    VOLUME,
    /** Part of a whole, to 1 %. */
    SHARE
  }

  private static final double MILLIMETRE = 1e-3;
  private static final double TENTH_OF_A_LITRE = 1e-4;
  private static final double PER_CENT = 0.01;

  /** Rounding that must not cost a step. */
  private static final double ROUNDING = 1e-6;

  static Scale height(double base, double lowest, double highest, double today) {
    return of(Kind.HEIGHT, base, MILLIMETRE, lowest - base, highest - base, today);
  }

  static Scale width(double least, double most, double today) {
    return of(Kind.WIDTH, 0, MILLIMETRE, least, most, today);
  }

  static Scale volume(double least, double most, double today) {
    return of(Kind.VOLUME, 0, TENTH_OF_A_LITRE, least, most, today);
  }

  static Scale share(double least, double most, double today) {
    return of(Kind.SHARE, 0, PER_CENT, least, most, today);
  }

  private static Scale of(
      Kind kind, double base, double step, double least, double most, double today) {
    int first = (int) Math.ceil(least / step - ROUNDING);
    int last = (int) Math.floor(most / step + ROUNDING);
    return new Scale(kind, base, step, first, Math.max(first, last), today);
  }

  /** The value of a step. */
  public double value(int at) {
    return base + at * step;
  }

  /** The range in which today's value lies, or to an end of which it lies within a step. */
  Optional<SafeRange> todayIn(List<SafeRange> ranges) {
    double close = step * (1 - ROUNDING);
    return ranges.stream()
        .filter(range -> today > range.from() - close && today < range.to() + close)
        .findFirst();
  }

  /** The last step at or below today's value. */
  int below() {
    return (int) Math.floor((today - base) / step + ROUNDING);
  }

  /** The first step at or above today's value. */
  int above() {
    return (int) Math.ceil((today - base) / step - ROUNDING);
  }
}
