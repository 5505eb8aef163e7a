package dryfloor.analysis.practice;

import static dryfloor.analysis.installation.Plan.box;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.analysis.installation.DisplayAboveSump;
import dryfloor.analysis.installation.Plan;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.model.element.Control.LevelSwitch.Action;
import dryfloor.model.element.Run;
import dryfloor.model.element.Vessel.Role;
import dryfloor.model.part.Part;
import dryfloor.model.part.Power;
import dryfloor.model.shape.Shape;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Each rule with a drawing that breaks it beside one that keeps it. */
class WarningsTest {

  private static Plan cellar() {
    return Plan.of("Cellar")
        .storey("cellar", 0)
        .floor("floor", 20)
        .circuit("main")
        .drain("gully", -0.3)
        .mains("mains", 1.5, 300_000);
  }

  private static <W extends Warning> List<W> warnings(Plan plan, Class<W> kind)
      throws BaselineProblem {
    return Warnings.of(plan.draw()).stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  /** A tank of 500 mm, shut off by a float valve at 300 mm; the outlet so far above its bottom. */
  private static Plan filled(Role role, double outlet) {
    return cellar()
        .vessel("tank", box(1, 0.5, 0.5), v -> v.in("floor").level(0.3).role(role).fresh())
        .run(
            "fill",
            r ->
                r.fromSupply("mains")
                    .to("tank", outlet)
                    .bore(0.012)
                    .length(2)
                    .floatValve("float", 1, 0.3, "tank", 0.3, 0.05));
  }

  /** Twice 12 mm is 24 mm above the rim at 500 mm. */
  @Test
  void anInletNeedsTwiceItsBoreAboveTheRim() throws BaselineProblem {
    assertThat(warnings(filled(Role.RESERVOIR, 0.52), Warning.AirGapTooSmall.class))
        .hasSize(1)
        .first()
        .satisfies(
            warning -> {
              assertThat(warning.gap()).isCloseTo(0.020, within(1e-9));
              assertThat(warning.needed()).isCloseTo(0.024, within(1e-9));
            });
    assertThat(warnings(filled(Role.RESERVOIR, 0.524), Warning.AirGapTooSmall.class)).isEmpty();
  }

  @Test
  void waterWithoutEndDoesNotFeedASumpStraight() throws BaselineProblem {
    assertThat(warnings(filled(Role.SUMP, 0.53), Warning.MainsInCirculation.class))
        .containsExactly(new Warning.MainsInCirculation("mains", "fill", "tank"));
    assertThat(warnings(filled(Role.RESERVOIR, 0.53), Warning.MainsInCirculation.class)).isEmpty();
  }

  @Test
  void aValveOnTheMainsShutsWithoutPower() throws BaselineProblem {
    assertThat(warnings(withPoweredValve(Part.Valve.Rest.AS_IT_IS), Warning.OpenWithoutPower.class))
        .containsExactly(new Warning.OpenWithoutPower("mains", "solenoid"));
    assertThat(warnings(withPoweredValve(Part.Valve.Rest.CLOSED), Warning.OpenWithoutPower.class))
        .isEmpty();
  }

  private static Plan withPoweredValve(Part.Valve.Rest rest) {
    Power power = new Power("main", Power.OnReturn.RESTARTS, 0);
    return cellar()
        .vessel("tank", box(1, 0.5, 0.5), v -> v.in("floor").level(0.3).role(Role.RESERVOIR))
        .run(
            "fill",
            r ->
                r.fromSupply("mains")
                    .to("tank", 0.53)
                    .bore(0.012)
                    .parts(
                        new Part.Valve(
                            "solenoid",
                            "solenoid",
                            0.5,
                            0.3,
                            1,
                            new Part.Valve.Drive.Powered(power, rest))))
        .levelSwitch("switch", "tank", 0.2, 0.25, Action.FILLS, "solenoid");
  }

  /**
   * With the outlet at 200 mm the display empties into a sump without room for it, unless the check
   * valve holds; a siphon break at 585 mm makes that harmless ({@code LimitsByHandTest} has sums).
   */
  @Test
  void aCheckValveIsNotAlone() throws BaselineProblem {
    Plan withBreak = new DisplayAboveSump().withCheckValve().outletAt(0.2).plan();
    Plan withoutBreak =
        new DisplayAboveSump().withCheckValve().outletAt(0.2).breakHole(0.0005).plan();

    assertThat(warnings(withBreak, Warning.CheckValveAlone.class)).isEmpty();
    assertThat(warnings(withoutBreak, Warning.CheckValveAlone.class))
        .extracting(Warning.CheckValveAlone::checkValve)
        .containsExactly("check-valve");
  }

  @Test
  void oneHoleIsOneHoleOnly() throws BaselineProblem {
    assertThat(warnings(new DisplayAboveSump().plan(), Warning.SingleSiphonBreak.class))
        .containsExactly(new Warning.SingleSiphonBreak("return", "siphon-break"));
  }

  @Test
  void anEmergencyDrainIsAsWideAsTheMainOneAndHasNoValve() throws BaselineProblem {
    Plan narrow =
        new DisplayAboveSump()
            .plan()
            .run(
                "emergency",
                r ->
                    r.fromLip("display", 0.63)
                        .to("sump", 0.48)
                        .bore(0.04)
                        .length(4.5)
                        .duty(Run.Duty.EMERGENCY)
                        .valve("gate", 1, 1));

    assertThat(warnings(narrow, Warning.EmergencyNarrower.class))
        .containsExactly(new Warning.EmergencyNarrower("emergency", 0.04, "drain", 0.05));
    assertThat(warnings(narrow, Warning.EmergencyWithValve.class))
        .containsExactly(new Warning.EmergencyWithValve("emergency", "gate"));
  }

  /**
   *
   *
   * <pre>
   * After power loss sump and chamber stand at 345.6 mm of 500 (PowerLossByHandTest):
   *   0.7 m² · 154.4 mm = 108 L of room; the reservoir holds 1 · 0.5 · 230 = 115 L, or 100 L.
   * </pre>
   */
  @Test
  void aReservoirFitsIntoWhatItFeedsAfterADrainDown() throws BaselineProblem {
    assertThat(warnings(withReservoir(0.23), Warning.ReservoirTooLarge.class))
        .hasSize(1)
        .first()
        .satisfies(
            warning -> {
              assertThat(warning.water()).isCloseTo(0.115, within(1e-9));
              assertThat(warning.room()).isCloseTo(0.108, within(5e-4));
            });
    assertThat(warnings(withReservoir(0.20), Warning.ReservoirTooLarge.class)).isEmpty();
  }

  private static Plan withReservoir(double level) {
    return new DisplayAboveSump()
        .plan()
        .vessel(
            "reservoir",
            box(1, 0.5, 0.4),
            v -> v.in("plant-room").level(level).fresh().role(Role.RESERVOIR))
        .run(
            "top-off",
            r ->
                r.from("reservoir", 0.02)
                    .to("chamber", 0.55)
                    .bore(0.008)
                    .length(2)
                    .pump("top-off-pump", 0.1, "main", 0, 2, 0.02, 0))
        .levelSwitch("top-off-switch", "chamber", 0.1, 0.15, Action.FILLS, "top-off-pump");
  }

  /**
   *
   *
   * <pre>
   * A pan of 1.2 · 0.6 · 50 mm round a tank of 1.0 · 0.5 m, its bottom 10 mm up, with 300 mm in it:
   *   holds 36 − 0.5 · 40 = 16 L, needs 110 % of 150 L = 165 L.
   * Its drain of 16 mm is narrower than 19 mm. Full it takes 0.61 · 201 mm² · √(2 g 0.05) = 0.12 L/s,
   * a feed of 0.3 L/s more than that.
   * </pre>
   */
  @Test
  void aPanHoldsAndDrainsWhatStandsAboveIt() throws BaselineProblem {
    Plan pan =
        cellar()
            .basin("pan", box(1.2, 0.6, 0.05), "floor")
            .vessel("tank", box(1, 0.5, 0.5), v -> v.in("pan").raised(0.01).level(0.3))
            .run("pan-drain", r -> r.from("pan", 0).toDrain("gully").bore(0.016).length(1))
            .run(
                "stirring",
                r ->
                    r.from("tank", 0.05)
                        .to("tank", 0.25)
                        .length(2)
                        .bore(0.04)
                        .standsIn("pan")
                        .pump("stirrer", 0.1, "main", 0, 1, 0.5, 0));

    assertThat(warnings(pan, Warning.PanDrainNarrow.class)).hasSize(1);
    assertThat(warnings(pan, Warning.ContainmentSmall.class))
        .hasSize(1)
        .first()
        .satisfies(
            warning -> {
              assertThat(warning.holds()).isCloseTo(0.016, within(1e-9));
              assertThat(warning.needed()).isCloseTo(0.165, within(1e-9));
            });
    assertThat(warnings(pan, Warning.PanDrainTakesLess.class))
        .hasSize(1)
        .first()
        .satisfies(
            warning -> {
              assertThat(warning.takes()).isCloseTo(0.1215e-3, within(0.5e-6));
              assertThat(warning.carries()).isBetween(0.3e-3, 0.5e-3);
            });
  }

  /**
   *
   *
   * <pre>
   * The least that the code asks for (International Residential Code 2015, P2801.6 and P2801.6.1):
   * 1 1/2 in deep, its drain 3/4 in. One of 24 in across holds
   *   π/4 · (24 in)² · 1.5 in = 678.6 in³ = 2.94 US gal (231 in³ each) = 11.1 L,
   * which is for drips: a round tank of 0.5 m over it with 300 mm of water has 58.9 L, and 64.8 L
   * are 110 % of that.
   * </pre>
   */
  @Test
  void theLeastPanOfTheCodeDrainsDripsAndHoldsNoTank() throws BaselineProblem {
    double inch = 0.0254;
    assertThat(warnings(panOfTheCode(0.75 * inch), Warning.PanDrainNarrow.class)).isEmpty();
    assertThat(warnings(panOfTheCode(0.74 * inch), Warning.PanDrainNarrow.class)).hasSize(1);
    assertThat(warnings(panOfTheCode(0.75 * inch), Warning.ContainmentSmall.class))
        .hasSize(1)
        .first()
        .satisfies(
            warning -> {
              assertThat(warning.holds()).isCloseTo(2.94 * 231 * Math.pow(inch, 3), within(1e-5));
              assertThat(warning.needed()).isCloseTo(0.0648, within(5e-5));
            });
  }

  private static Plan panOfTheCode(double bore) {
    double inch = 0.0254;
    return cellar()
        .basin("pan", new Shape.Cylinder(24 * inch, 1.5 * inch), "floor")
        .vessel("tank", new Shape.Cylinder(0.5, 0.5), v -> v.in("pan").raised(0.05).level(0.3))
        .run("pan-drain", r -> r.from("pan", 0).toDrain("gully").bore(bore).length(1));
  }

  /**
   *
   *
   * <pre>
   * Upstairs, 2 m² of pan of 50 mm with a tank of 1 m² and 400 mm of water standing on its floor:
   *   (100 − 50) L and 400 L on 2 m²: 225 kg/m² · 9.80665 = 2206 Pa, more than 2000.
   * </pre>
   */
  @Test
  void aFullBasinUpstairsIsWeighed() throws BaselineProblem {
    Plan upstairs =
        cellar()
            .storey("upper", 3)
            .floor("hall", 30)
            .basin("pan", box(2, 1, 0.05), "hall")
            .vessel("tank", box(1, 1, 0.6), v -> v.in("pan").level(0.4));

    assertThat(warnings(upstairs, Warning.FullBasinHeavy.class))
        .hasSize(1)
        .first()
        .satisfies(warning -> assertThat(warning.load()).isCloseTo(2206.5, within(1.0)));
  }

  @Test
  void theGroundCarriesAFullBasinAndAnyFloorALightOne() throws BaselineProblem {
    Plan onTheGround =
        cellar()
            .basin("pan", box(2, 1, 0.05), "floor")
            .vessel("tank", box(1, 1, 0.6), v -> v.in("pan").level(0.4));
    Plan light =
        cellar()
            .storey("upper", 3)
            .floor("hall", 30)
            .basin("pan", box(2, 1, 0.05), "hall")
            .vessel("tank", box(1, 1, 0.6), v -> v.in("pan").level(0.3));

    assertThat(warnings(onTheGround, Warning.FullBasinHeavy.class)).isEmpty();
    assertThat(warnings(light, Warning.FullBasinHeavy.class)).isEmpty();
  }

  @Test
  void aPitPumpHasABackup() throws BaselineProblem {
    assertThat(warnings(withPitPump("main"), Warning.PitPumpWithoutBackup.class))
        .containsExactly(new Warning.PitPumpWithoutBackup("pit-pump", "pit", "main"));
    assertThat(warnings(withPitPump("ups"), Warning.PitPumpWithoutBackup.class)).isEmpty();
  }

  private static Plan withPitPump(String circuit) {
    return cellar()
        .circuit("ups", 3600)
        .basin("pit", box(0.5, 0.5, 0.5), "floor")
        .run(
            "pit-line",
            r ->
                r.from("pit", 0.02)
                    .toDrain("gully")
                    .length(2)
                    .pump("pit-pump", 0.1, circuit, 0, 4, 1, 0))
        .levelSwitch("pit-switch", "pit", 0.05, 0.2, Action.EMPTIES, "pit-pump");
  }

  @Test
  void everyWarningNamesItsSource() {
    assertThat(Rule.values()).allMatch(rule -> !rule.source().isBlank());
  }
}
