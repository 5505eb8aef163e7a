package dryfloor.analysis.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class OrificeTest {

  @Test
  void passesNothingWithoutHeadButIsReadyToPass() {
    assertThat(Orifice.flow(0.61, 1e-4, 0.0)).isZero();
    assertThat(Orifice.flowPerHead(0.61, 1e-4, 0.0)).isPositive().isFinite();
  }

  @Test
  void goesOverIntoTheStraightLineWithoutAJump() {
    double above = Orifice.flow(0.61, 1e-4, Math.nextUp(1e-5));
    double below = Orifice.flow(0.61, 1e-4, Math.nextDown(1e-5));
    assertThat(below).isCloseTo(above, within(1e-14 * above));
  }

  @Test
  void strayFromTheRootIsAtMostAQuarterOrSoOfTheRootWhereItBends() {
    double bend = Math.sqrt(2.0 * Physical.GRAVITY * 1e-5);
    double most = 0.0;
    for (double head = 0.0; head < 1e-3; head += 1e-8) {
      double root = Math.sqrt(2.0 * Physical.GRAVITY * head);
      most = Math.max(most, Math.abs(Orifice.flow(1.0, 1.0, head) - root));
    }
    // The largest of √x − x/(x² + 1)^¼ is 0.2544, near x = 0.28.
    assertThat(most / bend).isCloseTo(0.2544, within(1e-4));
  }

  @Property(tries = 1000)
  void slopeIsThatOfTheFlow(@ForAll @Scale(6) @DoubleRange(min = -9, max = 2) double logHead) {
    double head = Math.pow(10.0, logHead);
    if (Math.abs(head - 1e-5) < 1e-9) {
      return;
    }
    double step = 1e-5 * head;
    double difference =
        Orifice.flow(0.61, 1e-4, head + step) - Orifice.flow(0.61, 1e-4, head - step);
    double slope = Orifice.flowPerHead(0.61, 1e-4, head);
    assertThat(slope).isCloseTo(difference / (2.0 * step), within(1e-6 * slope));
    assertThat(Orifice.flowPerHead(0.61, 1e-4, -head)).isEqualTo(slope);
    assertThat(Orifice.flow(0.61, 1e-4, -head)).isEqualTo(-Orifice.flow(0.61, 1e-4, head));
  }
}
