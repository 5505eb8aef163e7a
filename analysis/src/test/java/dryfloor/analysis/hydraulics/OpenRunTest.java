package dryfloor.analysis.hydraulics;

import static dryfloor.analysis.hydraulics.ReferenceCase.expect;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import dryfloor.analysis.hydraulics.ReferenceCase.Kind;
import dryfloor.analysis.hydraulics.ReferenceCase.Seen;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Round pipes that run partly full. */
class OpenRunTest {

  static Stream<ReferenceCase> published() {
    return Stream.of(
        // Figures of the drawing seen in a quotation, the printed answer from memory.
        expect("200 mm of clay tile, n 0.013, 1 in 1000, half full, m³/s", 5.18e-3, 0.003)
            .from(
                Kind.WORKED_EXAMPLE,
                Seen.FROM_MEMORY,
                "Mott, Applied Fluid Mechanics, example 14.2",
                OpenRun.flow(0.1, 0.2, 0.001, 0.013)),
        element("A/D² at depth 0.25", 0.1535, OpenRun.area(0.25, 1)),
        element("A/D² at depth 0.30", 0.1982, OpenRun.area(0.3, 1)),
        element("A/D² at depth 0.70", 0.5872, OpenRun.area(0.7, 1)),
        element("A R^(2/3)/D^(8/3) at depth 0.30", 0.0610, OpenRun.flow(0.3, 1, 1, 1)),
        element("A R^(2/3)/D^(8/3) at depth 0.50", 0.1558, OpenRun.flow(0.5, 1, 1, 1)),
        element("A R^(2/3)/D^(8/3) at depth 0.70", 0.2610, OpenRun.flow(0.7, 1, 1, 1)),
        element("A R^(2/3)/D^(8/3) full", 0.3117, OpenRun.flow(1, 1, 1, 1)));
  }

  private static ReferenceCase element(String quantity, double expected, double computed) {
    return expect(quantity, expected, 1e-3)
        .from(
            Kind.STANDARD,
            Seen.FROM_MEMORY,
            "Chow, Open-Channel Hydraulics (1959), appendix A, circular sections",
            computed);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("published")
  void agreesWithWhatOthersPublished(ReferenceCase published) {
    published.holds();
  }

  @Test
  void holdsHalfItsBoreAtHalfTheFlowOfTheFullPipe() {
    double full = OpenRun.flow(0.05, 0.05, 0.02, OpenRun.SMOOTH_PLASTIC);

    double area = OpenRun.areaAtFlow(full / 2, 0.05, 0.02, OpenRun.SMOOTH_PLASTIC);

    assertThat(area).isCloseTo(Physical.areaOfBore(0.05) / 2, withPercentage(0.01));
  }

  @Test
  void isFullWhereItCannotCarryTheFlowWithAirAbove() {
    double most = OpenRun.flow(0.938 * 0.05, 0.05, 0.02, OpenRun.SMOOTH_PLASTIC);

    assertThat(OpenRun.areaAtFlow(1.01 * most, 0.05, 0.02, OpenRun.SMOOTH_PLASTIC))
        .isEqualTo(Physical.areaOfBore(0.05));
    assertThat(OpenRun.areaAtFlow(1e-4, 0.05, 0, OpenRun.SMOOTH_PLASTIC))
        .isEqualTo(Physical.areaOfBore(0.05));
  }

  @Test
  void isEmptyWithoutFlow() {
    assertThat(OpenRun.areaAtFlow(0, 0.05, 0.02, OpenRun.SMOOTH_PLASTIC))
        .isCloseTo(0, within(1e-9));
    assertThat(OpenRun.flow(0, 0.05, 0.02, OpenRun.SMOOTH_PLASTIC)).isZero();
  }
}
