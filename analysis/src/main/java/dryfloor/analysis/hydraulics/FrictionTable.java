package dryfloor.analysis.hydraulics;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicReferenceArray;

/**
 * Churchill's friction for pipes of one relative roughness, kept ready: f·Re² over Re, of which the
 * head lost is a multiple.
 *
 * <p>A solver asks for it many million times, and the powers and the logarithm in {@link Friction}
 * cost more than all else it does. Between points that lie so close that they are {@value
 * #INTERVALS} to each doubling of Re, f·Re² is followed by the cubic with the exact values and
 * slopes at both (Hermite; de Boor, A Practical Guide to Splines, 1978, from memory). It differs
 * from {@link Friction} by less than 1e-7 of itself, and rises without a break as that does.
 */
final class FrictionTable {

  private static final int INTERVALS = 128;
  private static final int INTERVAL_BITS = 7;
  private static final int MANTISSA_BITS = 52;
  private static final int EXPONENT_BIAS = 1023;

  /** The first doubling begins at 2^9 = 512, where flow is still purely laminar. */
  private static final int FIRST = 9;

  /** The last one ends at 2^27, a little beyond where the law is valid. */
  private static final int END = 27;

  /** Coefficients of one cubic: powers 0 to 3 of the share of the interval. */
  private static final int COEFFICIENTS = 4;

  /** More roughnesses than any one drawing has; beyond them the tables are made again. */
  private static final int MOST_TABLES = 512;

  private static final Map<Double, FrictionTable> TABLES = new ConcurrentHashMap<>();

  private final double relativeRoughness;
  private final AtomicReferenceArray<double[]> doublings = new AtomicReferenceArray<>(END - FIRST);

  private FrictionTable(double relativeRoughness) {
    this.relativeRoughness = relativeRoughness;
  }

  /** The table for a relative roughness, 0 to 0.05. */
  static FrictionTable of(double relativeRoughness) {
    if (TABLES.size() > MOST_TABLES) {
      TABLES.clear();
    }
    return TABLES.computeIfAbsent(relativeRoughness, FrictionTable::new);
  }

  /** f·Re² at a Reynolds number, 0 or more. */
  double product(double reynolds) {
    int doubling = Math.getExponent(reynolds) - FIRST;
    if (doubling < 0) {
      return 64.0 * reynolds;
    }
    if (doubling >= END - FIRST) {
      return Friction.factor(reynolds, relativeRoughness) * reynolds * reynolds;
    }
    double[] cubics = cubics(doubling);
    long bits = Double.doubleToRawLongBits(reynolds);
    int at = COEFFICIENTS * interval(bits);
    double share = share(bits);
    return cubics[at]
        + share * (cubics[at + 1] + share * (cubics[at + 2] + share * cubics[at + 3]));
  }

  /** Slope of {@link #product} by the Reynolds number. */
  double productPerReynolds(double reynolds) {
    int doubling = Math.getExponent(reynolds) - FIRST;
    if (doubling < 0) {
      return 64.0;
    }
    if (doubling >= END - FIRST) {
      return exactSlope(reynolds);
    }
    double[] cubics = cubics(doubling);
    long bits = Double.doubleToRawLongBits(reynolds);
    int at = COEFFICIENTS * interval(bits);
    double share = share(bits);
    double perShare =
        cubics[at + 1] + share * (2.0 * cubics[at + 2] + share * 3.0 * cubics[at + 3]);
    return perShare / width(doubling);
  }

  private static int interval(long bits) {
    return (int) (bits >>> (MANTISSA_BITS - INTERVAL_BITS)) & (INTERVALS - 1);
  }

  /** How far into its interval a number lies, 0 to 1: the rest of its mantissa. */
  private static double share(long bits) {
    long rest = bits << (64 - MANTISSA_BITS + INTERVAL_BITS) >>> (64 - MANTISSA_BITS);
    return Double.longBitsToDouble(((long) EXPONENT_BIAS << MANTISSA_BITS) | rest) - 1.0;
  }

  private static double width(int doubling) {
    return Math.scalb(1.0, doubling + FIRST - INTERVAL_BITS);
  }

  private double[] cubics(int doubling) {
    double[] known = doublings.getAcquire(doubling);
    return known != null ? known : make(doubling);
  }

  private double[] make(int doubling) {
    double[] cubics = new double[COEFFICIENTS * INTERVALS];
    double width = width(doubling);
    double start = Math.scalb(1.0, doubling + FIRST);
    for (int interval = 0; interval < INTERVALS; interval++) {
      double from = start + interval * width;
      double to = from + width;
      double value = exact(from);
      double rise = exact(to) - value;
      double slope = exactSlope(from) * width;
      double slopeAtEnd = exactSlope(to) * width;
      int at = COEFFICIENTS * interval;
      cubics[at] = value;
      cubics[at + 1] = slope;
      cubics[at + 2] = 3.0 * rise - 2.0 * slope - slopeAtEnd;
      cubics[at + 3] = slope + slopeAtEnd - 2.0 * rise;
    }
    doublings.setRelease(doubling, cubics);
    return cubics;
  }

  private double exact(double reynolds) {
    return Friction.factor(reynolds, relativeRoughness) * reynolds * reynolds;
  }

  private double exactSlope(double reynolds) {
    return Friction.factor(reynolds, relativeRoughness)
        * (2.0 + Friction.logarithmicSlope(reynolds, relativeRoughness))
        * reynolds;
  }
}
