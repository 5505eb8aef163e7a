package dryfloor.analysis.hydraulics;

import static dryfloor.analysis.hydraulics.ReferenceCase.expect;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.analysis.hydraulics.ReferenceCase.Kind;
import dryfloor.analysis.hydraulics.ReferenceCase.Seen;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ValveLossTest {

  static Stream<ReferenceCase> published() {
    double gallonsPerMinute = 3.785411784e-3 / 60.0;
    double psi = 6894.757;
    return Stream.of(
        expect("K of a valve of Kv 500 in a bore of 154 mm", 3.6, 0.005)
            .workedExample("Crane TP-410M (2009), example 7-2", ValveLoss.fittingsOf(500.0, 0.154)),
        expect("Kv of a Cv of 1", 0.865, 0.001)
            .from(
                Kind.CLOSED_FORM,
                Seen.FROM_MEMORY,
                "IEC 60534-1 and ISA-75.01.01",
                ValveLoss.kvFromCv(1.0)),
        expect(
                "pressure lost at 250 gal/min by the Cv found without piping factor, psi",
                9.8,
                0.013)
            .workedExample(
                "Crane TP-410 (2009), example 7-27, 79.94 with the factor",
                ValveLoss.head(250.0 * gallonsPerMinute, ValveLoss.kvFromCv(78.97632))
                    * Physical.GRAVITY
                    * 60.998
                    * 16.018463
                    / psi));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("published")
  void agreesWithWhatOthersPublished(ReferenceCase published) {
    published.holds();
  }

  @Test
  void losesOneBarAtItsRatedFlow() {
    double bar = ValveLoss.head(12.0 / 3600.0, 12.0) * 1000.0 * Physical.GRAVITY;
    assertThat(bar).isCloseTo(1e5, within(1e-3));
  }

  @Test
  void losesFourTimesAsMuchHalfOpen() {
    double open = ValveLoss.head(0.001, 10.0);
    double half = ValveLoss.head(0.001, ValveLoss.kvAtOpening(10.0, 0.5));
    assertThat(half).isCloseTo(4.0 * open, within(1e-6 * half));
  }

  @Property(tries = 500)
  void isTheSameLossAsItsCoefficientInAPipe(
      @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 100) double kv,
      @ForAll @Scale(6) @DoubleRange(min = 0.02, max = 0.2) double diameter) {
    double flow = 0.2 * kv / 3600.0;
    double asFitting =
        PipeLoss.head(flow, diameter, 0.0, 0.0, ValveLoss.fittingsOf(kv, diameter), 1e-7);
    assertThat(ValveLoss.head(flow, kv)).isCloseTo(asFitting, within(1e-3 * asFitting));
  }

  @Property(tries = 500)
  void slopeIsThatOfTheLossAndNeverNothing(
      @ForAll @Scale(6) @DoubleRange(min = -12, max = -1) double logFlow,
      @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 500) double kv) {
    double flow = Math.pow(10.0, logFlow);
    double step = 1e-5 * flow;
    double difference = ValveLoss.head(flow + step, kv) - ValveLoss.head(flow - step, kv);
    double slope = ValveLoss.headPerFlow(flow, kv);
    assertThat(slope).isCloseTo(difference / (2.0 * step), within(1e-6 * slope));
    assertThat(ValveLoss.headPerFlow(-flow, kv)).isEqualTo(slope);
    assertThat(ValveLoss.headPerFlow(0.0, kv)).isPositive();
    assertThat(ValveLoss.head(-flow, kv)).isEqualTo(-ValveLoss.head(flow, kv));
  }
}
