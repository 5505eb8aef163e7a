package dryfloor.analysis.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

/** The law made ready to be asked often against the law itself, {@link PipeLoss}. */
class PipeResistanceTest {

  private static final double BORE = 0.04;
  private static final double VISCOSITY = 0.9e-6;

  @Property(tries = 2000)
  void losesWhatTheLawItselfLosesInAnyRegime(
      @ForAll @Scale(6) @DoubleRange(min = -2, max = 8.5) double logarithmOfReynolds,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.05) double relativeRoughness) {
    double flow = flowAt(Math.pow(10, logarithmOfReynolds));
    PipeResistance ready = PipeResistance.of(BORE, 12, relativeRoughness * BORE, VISCOSITY);

    double itself = PipeLoss.head(flow, BORE, 12, relativeRoughness * BORE, 1.5, VISCOSITY);
    assertThat(ready.head(flow, 1.5)).isCloseTo(itself, within(1e-7 * itself));
    assertThat(ready.head(-flow, 1.5)).isEqualTo(-ready.head(flow, 1.5));
  }

  @Property(tries = 2000)
  void risesAsSteeplyAsTheLawItself(
      @ForAll @Scale(6) @DoubleRange(min = -2, max = 8.5) double logarithmOfReynolds,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.05) double relativeRoughness) {
    double flow = flowAt(Math.pow(10, logarithmOfReynolds));
    PipeResistance ready = PipeResistance.of(BORE, 12, relativeRoughness * BORE, VISCOSITY);

    double itself = PipeLoss.headPerFlow(flow, BORE, 12, relativeRoughness * BORE, 1.5, VISCOSITY);
    assertThat(ready.headPerFlow(flow, 1.5)).isCloseTo(itself, within(1e-4 * itself));
  }

  @Test
  void neverFallsWhereTheFlowRises() {
    PipeResistance ready = PipeResistance.of(BORE, 12, 1e-6, VISCOSITY);
    double before = 0;
    for (double reynolds = 100; reynolds < 3e8; reynolds *= 1.0007) {
      double head = ready.head(flowAt(reynolds), 0);
      assertThat(head).as("at Re %s", reynolds).isGreaterThan(before);
      assertThat(ready.headPerFlow(flowAt(reynolds), 0)).isPositive();
      before = head;
    }
  }

  @Test
  void waterAtRestLosesNothing() {
    PipeResistance ready = PipeResistance.of(BORE, 12, 1e-6, VISCOSITY);
    assertThat(ready.head(0, 3)).isZero();
    assertThat(ready.headPerFlow(0, 3)).isPositive();
  }

  private static double flowAt(double reynolds) {
    return reynolds * VISCOSITY / BORE * Physical.areaOfBore(BORE);
  }
}
