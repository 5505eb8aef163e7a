package dryfloor.model.file;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.model.Installation;
import java.util.OptionalDouble;
import org.assertj.core.api.recursive.comparison.RecursiveComparisonConfiguration;

/** Compares installations up to rounding. */
final class Rounding {

  /** Elevations are sums: a nanometre, or a billionth of what is larger. */
  static final double BILLIONTH = 1e-9;

  private static final RecursiveComparisonConfiguration UP_TO_ROUNDING =
      RecursiveComparisonConfiguration.builder()
          .withEqualsForType(Rounding::same, Double.class)
          .withEqualsForType(Rounding::same, OptionalDouble.class)
          .withStrictTypeChecking(true)
          .build();

  private Rounding() {}

  static void assertSame(Installation actual, Installation expected) {
    assertThat(actual).usingRecursiveComparison(UP_TO_ROUNDING).isEqualTo(expected);
  }

  private static boolean same(Double a, Double b) {
    return Math.abs(a - b) <= BILLIONTH * Math.max(1, Math.max(Math.abs(a), Math.abs(b)));
  }

  private static boolean same(OptionalDouble a, OptionalDouble b) {
    return a.isPresent() == b.isPresent()
        && (a.isEmpty() || same(a.getAsDouble(), b.getAsDouble()));
  }
}
