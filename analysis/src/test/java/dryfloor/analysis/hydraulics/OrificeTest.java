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

class OrificeTest {

  static Stream<ReferenceCase> published() {
    double foot = 0.3048;
    return Stream.of(
        expect("velocity 30 ft below the surface, ft/s", 43.95, 0.0005)
            .workedExample(
                "de Nevers, example 5.3, p. 143", Orifice.flow(1.0, 1.0, 30.0 * foot) / foot),
        expect("flow through a hole of 40 mm under 2 m, m³/s", 4.707e-3, 0.001)
            .workedExample(
                "Subramanya, example 13.1, p. 320",
                Orifice.flow(0.598, Physical.areaOfBore(0.04), 2.0)),
        expect("flow through a hole of 650 mm² under 1.2 m, m³/s", 0.117 / 60.0, 0.002)
            .from(
                Kind.MEASUREMENT,
                Seen.IN_A_QUOTATION,
                "Douglas, Gasiorek and Swaffield, example 6.4, p. 190, Cd 0.618",
                Orifice.flow(0.618, 650e-6, 1.2)),
        expect("Cd of a sharp edge, measured", 0.618, 0.02)
            .from(
                Kind.MEASUREMENT,
                Seen.IN_A_QUOTATION,
                "Douglas, Gasiorek and Swaffield, example 6.4, p. 190",
                Orifice.SHARP),
        expect("contraction of a slot, π/(π+2)", Math.PI / (Math.PI + 2.0), 0.02)
            .from(Kind.CLOSED_FORM, Seen.FROM_MEMORY, "Kirchhoff", Orifice.SHARP),
        expect("Cd of a short tube, middle of 0.80 to 0.82", 0.81, 0.02)
            .from(Kind.STANDARD, Seen.FROM_MEMORY, "textbooks", Orifice.SHORT_TUBE),
        expect("Cd of a re-entrant tube running clear", 0.51, 0.02)
            .from(Kind.STANDARD, Seen.FROM_MEMORY, "Borda, textbooks", Orifice.RE_ENTRANT),
        expect("flow between two tanks 0.30 m apart in level, m³/s", 0.01504, 0.0005)
            .workedExample("Schaschke, example 6.6, p. 153", Orifice.flow(0.62, 0.01, 0.30)));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("published")
  void agreesWithWhatOthersPublished(ReferenceCase published) {
    published.holds();
  }

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
