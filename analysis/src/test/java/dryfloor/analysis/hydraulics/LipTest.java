package dryfloor.analysis.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class LipTest {

  /**
   * Head over bore where ring weir and orifice give the same: algebra from 1.84 and 0.61, evaluated
   * with 9.81 m/s²; closed form, from memory. It goes with the root of gravity.
   */
  private static final double HAND_OVER = 0.36711448642 * Math.sqrt(Physical.GRAVITY / 9.81);

  @Test
  void ringWeirHandsOverToTheOrificeAtAThirdOfTheBore() {
    double bore = 0.05;
    double before = HAND_OVER * bore * (1.0 - 1e-6);
    double after = HAND_OVER * bore * (1.0 + 1e-6);
    assertThat(Lip.flow(before, bore))
        .isLessThan(Orifice.flow(Orifice.SHARP, Physical.areaOfBore(bore), before));
    assertThat(Lip.flow(after, bore))
        .isEqualTo(Orifice.flow(Orifice.SHARP, Physical.areaOfBore(bore), after))
        .isCloseTo(Lip.flow(before, bore), within(1e-5 * Lip.flow(before, bore)));
  }

  /** Half the edge and half the hole: 1.84 · π · 50 mm · h^1.5 / 2 and 0.61 · A · √(2 g h) / 2. */
  @Test
  void dirtTakesItsShareOfTheEdgeAndOfTheHole() {
    double bore = 0.05;
    assertThat(Lip.flow(0.01242, bore, 0.5)).isCloseTo(0.2e-3, within(1e-7));
    assertThat(Lip.flow(0.03554, bore, 0.5)).isCloseTo(0.5e-3, within(1e-7));
    assertThat(Lip.flowPerHead(0.01242, bore, 0.5)).isEqualTo(0.5 * Lip.flowPerHead(0.01242, bore));
  }

  @Test
  void isDryUntilTheWaterReachesIt() {
    assertThat(Lip.flow(0.0, 0.05)).isZero();
    assertThat(Lip.flow(-0.02, 0.05)).isZero();
    assertThat(Lip.flowPerHead(-0.02, 0.05)).isZero();
  }

  @Property(tries = 1000)
  void swallowsMoreTheDeeperItIsDrowned(
      @ForAll @Scale(6) @DoubleRange(min = -6, max = 1) double logHead,
      @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 0.3) double bore) {
    double head = Math.pow(10.0, logHead);
    double step = 1e-6 * head;
    if (Math.abs(head / bore / HAND_OVER - 1.0) < 1e-5) {
      return;
    }
    double slope = Lip.flowPerHead(head, bore);
    double difference = Lip.flow(head + step, bore) - Lip.flow(head - step, bore);
    assertThat(slope).isPositive().isCloseTo(difference / (2.0 * step), within(1e-5 * slope));
  }
}
