package dryfloor.analysis.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The moment at which something happened in a step is found, however steep or flat its gauge. */
class CrossingTest {

  private static final double TOLERANCE = 1e-7;

  @ParameterizedTest
  @ValueSource(doubles = {1e-6, 0.02, 0.3, 0.5, 0.97, 1 - 1e-6})
  void aLevelThatFallsPastALipIsFoundInAFewLooks(double moment) {
    assertThat(looks(share -> moment - share, moment)).isLessThan(14);
  }

  /** A search by halves alone would need 24. */
  @ParameterizedTest
  @ValueSource(doubles = {1e-6, 0.02, 0.3, 0.5, 0.97, 1 - 1e-6})
  void aSwitchThatFlipsIsFoundHardlySlowerThanByHalves(double moment) {
    assertThat(looks(share -> share < moment ? 1 : -1e-6, moment)).isLessThan(30);
  }

  /** Looks at the gauge until the moment is found; it is found, and never before it. */
  private static int looks(DoubleUnaryOperator gauge, double moment) {
    AtomicInteger looks = new AtomicInteger();
    double found =
        Crossing.find(
            share -> {
              looks.incrementAndGet();
              return gauge.applyAsDouble(share);
            },
            gauge.applyAsDouble(0),
            gauge.applyAsDouble(1),
            TOLERANCE);
    assertThat(found).isCloseTo(moment, within(2 * TOLERANCE));
    assertThat(found).isGreaterThanOrEqualTo(moment - 1e-15);
    return looks.get();
  }
}
