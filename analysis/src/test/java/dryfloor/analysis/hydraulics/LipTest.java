package dryfloor.analysis.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class LipTest {

  /** Algebra from 1.84 and 0.61: the head over the bore is 0.36711448642; closed form. */
  @Test
  void ringWeirHandsOverToTheOrificeAtAThirdOfTheBore() {
    double bore = 0.05;
    double handOver = 0.36711448642 * bore;
    double orifice = Orifice.flow(Orifice.SHARP, Physical.areaOfBore(bore), handOver);
    assertThat(Lip.flow(handOver, bore)).isCloseTo(orifice, within(1e-9 * orifice));
    assertThat(Lip.flow(0.99 * handOver, bore))
        .isLessThan(Orifice.flow(Orifice.SHARP, Physical.areaOfBore(bore), 0.99 * handOver));
    assertThat(Lip.flow(1.01 * handOver, bore))
        .isEqualTo(Orifice.flow(Orifice.SHARP, Physical.areaOfBore(bore), 1.01 * handOver));
  }

  /** Encyclopaedia Britannica, Hydraulics, weirs: 3.33 in feet; standard, read in the document. */
  @Test
  void ringWeirIsFrancisFormulaRoundTheLip() {
    double foot = 0.3048;
    double perFootOfLip =
        Lip.flow(0.01 * foot, foot) / (Math.PI * foot) / Math.pow(0.01 * foot, 1.5);
    assertThat(perFootOfLip / Math.sqrt(foot)).isCloseTo(3.33, within(0.01 * 3.33));
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
    if (Math.abs(head / bore / 0.36711448642 - 1.0) < 1e-5) {
      return;
    }
    double slope = Lip.flowPerHead(head, bore);
    double difference = Lip.flow(head + step, bore) - Lip.flow(head - step, bore);
    assertThat(slope).isPositive().isCloseTo(difference / (2.0 * step), within(1e-5 * slope));
  }
}
