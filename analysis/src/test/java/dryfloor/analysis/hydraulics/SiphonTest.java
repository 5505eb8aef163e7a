package dryfloor.analysis.hydraulics;

import static dryfloor.analysis.hydraulics.ReferenceCase.expect;
import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.hydraulics.ReferenceCase.Kind;
import dryfloor.analysis.hydraulics.ReferenceCase.Seen;
import dryfloor.analysis.hydraulics.Siphon.BreakHole;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class SiphonTest {

  private static final double FOOT = 0.3048;
  private static final double PSI = 6894.757;
  private static final double POUND_PER_CUBIC_FOOT = 16.018463;
  private static final Water WATER = new Water(1000.0, 1e-8, 2339.0);

  static Stream<ReferenceCase> crests() {
    return Stream.of(
        expect("crest above still water of 20 °C, m", 10.108489392 * 9.81 / Physical.GRAVITY, 1e-5)
            .from(
                Kind.CLOSED_FORM,
                Seen.IN_A_QUOTATION,
                "textbook energy balance",
                Siphon.highestCrest(0.0, new Water(998.2, 1e-6, 2339.2))),
        expect("hump of a siphon that falls 10 ft, water of 60 °F, ft", 28.32, 0.005)
            .workedExample(
                "Munson, Young and Okiishi, example 3.10, p. 120",
                5.0 + crestInFeet(10.0, 62.4, 0.256)),
        expect("pump above its pond, 0.5 ft³/s, suction need 15 ft, ft", 7.65, 0.003)
            .workedExample(
                "Munson, Young and Okiishi, example 12.3, p. 702",
                crestInFeet(15.0 + suctionLosses(), 62.22, 0.5069)),
        expect("suction head left below a tank under 5 psi, ft", 13.9, 0.005)
            .workedExample(
                "Crane TP-410 (2009), example 7-32",
                crestInFeet(6.0, 62.364, 0.256) + 5.0 * 144.0 / 62.364 - 25.0),
        expect("pressure at the crest of a siphon of 100 mm with friction, kPa", -28.61, 0.003)
            .workedExample(
                "Douglas, Gasiorek and Swaffield, example 14.1, p. 468, Fanning f 0.08",
                gaugeKilopascals(WATER, 1.5, 17.5 / 49.5 * 4.0)),
        expect("absolute pressure at the crest of a petrol siphon, kPa", 81.1, 0.002)
            .workedExample(
                "Cengel and Cimbala, example 5-7, p. 207",
                101.325 + gaugeKilopascals(new Water(750.0, 1e-8, 20_000.0), 2.0, 0.75)));
  }

  static Stream<ReferenceCase> flows() {
    return Stream.of(
        expect("time for 4 L of petrol through 5 mm falling 0.75 m, s", 53.1, 0.002)
            .workedExample(
                "Cengel and Cimbala, example 5-7, p. 207",
                0.004 / PipeFlow.under(0.75, 0.005, 0.0, 0.0, 1.0, 1e-8)),
        expect("velocity of a siphon of 100 mm with friction, m/s", 1.26, 0.003)
            .workedExample(
                "Douglas, Gasiorek and Swaffield, example 14.1, p. 468, Fanning f 0.08",
                PipeFlow.under(4.0, 0.1, 0.0, 0.0, 0.5 + 0.32 * 15.0 / 0.1 + 1.0, 1e-8)
                    / Physical.areaOfBore(0.1)),
        expect("flow of a siphon of 150 mm between reservoirs, m³/s", 0.0271, 0.002)
            .workedExample(
                "Subramanya, example 11.17(a), p. 248",
                PipeFlow.under(16.0, 0.15, 0.0, 0.0, 0.02 * 1000.0 / 0.15, 1e-8)),
        expect("flow of a siphon of 100 mm and 5 km, m³/s", 0.0024597, 0.0005)
            .workedExample(
                "GATE Civil Engineering 2019, shift 1, question 60",
                PipeFlow.under(5.0, 0.1, 0.0, 0.0, 0.02 * 5000.0 / 0.1, 1e-8)),
        expect("flow of a siphon of 12 in and 2000 ft, ft³/s", 4.9, 0.01)
            .workedExample(
                "Lal, example 5.12, p. 151, Fanning f 0.005",
                PipeFlow.under(25.0 * FOOT, FOOT, 0.0, 0.0, 0.02 * 2000.0 + 1.5, 1e-8)
                    / Math.pow(FOOT, 3)));
  }

  static Stream<ReferenceCase> air() {
    String wisner = "Wisner, Mohsen and Kouwen (1975), evaluated";
    String hills = "Hills (1983), Froude number 0.3, evaluated";
    return Stream.of(
        closedForm("clears 25 mm upright, m/s", 0.53236926212, wisner, clearing(0.025, 90)),
        closedForm("clears 50 mm upright, m/s", 0.75288383068, wisner, clearing(0.05, 90)),
        closedForm("clears 50 mm at 10°, m/s", 0.65075621483, wisner, clearing(0.05, 10)),
        closedForm("vents itself in 32 mm, L/min", 8.1109520873, hills, venting(0.032)),
        closedForm("vents itself in 50 mm, L/min", 24.752661399, hills, venting(0.05)),
        closedForm("vents itself in 80 mm, L/min", 80.153383088, hills, venting(0.08)),
        expect("Froude number of 36 m³/h in 180 mm", 0.296, 0.002)
            .workedExample(
                "Hills (1983), as quoted with this sizing",
                0.3 * 36.0 / 3600.0 / Siphon.selfVentingFlow(0.18)));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource({"crests", "flows", "air"})
  void agreesWithWhatOthersPublished(ReferenceCase published) {
    published.holds();
  }

  /** The sizes are common practice: 3 mm in a bore of 25 mm and a quarter of its area. */
  @ParameterizedTest(name = "a hole of {0} mm in a bore of {1} mm is {2}")
  @CsvSource({
    "0, 25, TOO_SMALL",
    "1.4, 25, TOO_SMALL",
    "1.5, 25, IN_DOUBT",
    "2.9, 25, IN_DOUBT",
    "3, 25, CERTAIN",
    "3.1, 50, IN_DOUBT",
    "6, 50, CERTAIN",
    "25, 25, CERTAIN"
  })
  void breaksAtAHoleLargeEnoughForItsBore(double hole, double bore, BreakHole expected) {
    assertThat(Siphon.breakHole(area(hole), area(bore))).isEqualTo(expected);
  }

  @Test
  void crestSinksByWhatIsLostOnTheWay() {
    assertThat(Siphon.highestCrest(1.5, WATER)).isEqualTo(Siphon.highestCrest(0.0, WATER) - 1.5);
    assertThat(Siphon.highestCrest(0.0, Water.at(40.0, 0.0)))
        .isLessThan(Siphon.highestCrest(0.0, Water.at(10.0, 0.0)));
  }

  private static double area(double millimetres) {
    return Physical.areaOfBore(millimetres / 1000.0);
  }

  private static double gaugeKilopascals(Water water, double crest, double losses) {
    double spare = Siphon.highestCrest(losses, water) - crest;
    double absolute = water.vapourPressure() + spare * water.density() * Physical.GRAVITY;
    return (absolute - Physical.ATMOSPHERE) / 1000.0;
  }

  private static double crestInFeet(double lossesInFeet, double pounds, double psi) {
    Water water = new Water(pounds * POUND_PER_CUBIC_FOOT, 1e-6, psi * PSI);
    return Siphon.highestCrest(lossesInFeet * FOOT, water) / FOOT;
  }

  /** Loss coefficient 20 in a pipe of 4 in. */
  private static double suctionLosses() {
    double flow = 0.5 * Math.pow(FOOT, 3);
    return PipeLoss.head(flow, FOOT / 3.0, 0.0, 0.0, 20.0, 1e-6) / FOOT;
  }

  private static double clearing(double bore, double degrees) {
    return Siphon.airClearingVelocity(bore, Math.toRadians(degrees));
  }

  private static double venting(double bore) {
    return Siphon.selfVentingFlow(bore) * 60_000.0;
  }

  /** The figures were evaluated with 9.81 m/s²; both laws go with the root of gravity. */
  private static ReferenceCase closedForm(
      String quantity, double expected, String source, double computed) {
    return expect(quantity, expected * Math.sqrt(Physical.GRAVITY / 9.81), 1e-9)
        .from(Kind.CLOSED_FORM, Seen.IN_A_QUOTATION, source, computed);
  }
}
