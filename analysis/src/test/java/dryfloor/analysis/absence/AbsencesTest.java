package dryfloor.analysis.absence;

import static dryfloor.analysis.installation.Plan.box;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.installation.InTurn;
import dryfloor.analysis.installation.Plan;
import dryfloor.analysis.installation.RunPlan;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.HowBad;
import dryfloor.analysis.sweep.Progress;
import dryfloor.analysis.sweep.Sweep;
import dryfloor.model.Conditions;
import dryfloor.model.FailureSettings;
import dryfloor.model.Installation;
import dryfloor.model.element.Control;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/** Nobody there for so many days, worked out by hand where it can be. */
class AbsencesTest {

  private static final double HOUR = 3600;
  private static final double DAY = 86_400;

  /**
   *
   *
   * <pre>
   * A float that sticks lets 0.5 L/min into a vat of 1 m² with 200 mm left: 200 L take 400 minutes,
   * and from then on the floor gets it all. By the end of one day 720 − 200 = 520 L, by that of three
   * 2160 − 200 = 1960 L, by that of 14 10 080 − 200 = 9880 L.
   * </pre>
   */
  @Test
  void whatComesInForDaysAddsUpDayByDay() throws BaselineProblem {
    Installation house = houseWithATap().draw();
    AbsenceResult result = after(house, DAY, 3 * DAY, 14 * DAY);

    LeftAlone.Known stuck = known(result, "stuck-open.float");
    assertThat(stuck.firstWet().orElseThrow()).isCloseTo(400 * 60, within(60.0));
    assertThat(litres(stuck, 0)).isCloseTo(520, within(1.0));
    assertThat(litres(stuck, 1)).isCloseTo(1960, within(2.0));
    assertThat(litres(stuck, 2)).isCloseTo(9880, within(10.0));

    // A vat that bursts loses its 800 L, and its float then calls all the time.
    LeftAlone.Known worst = result.worstBy(14 * DAY).orElseThrow();
    assertThat(FailureNames.id(worst.failure())).isEqualTo("wall-fails.vat");
    assertThat(litres(worst, 2)).isCloseTo(10_880, within(11.0));
  }

  @Test
  void beforeTheFirstFloorIsWetNothingHasReachedIt() throws BaselineProblem {
    AbsenceResult result = after(houseWithATap().draw(), 6 * HOUR, 7 * HOUR);
    LeftAlone.Known stuck = known(result, "stuck-open.float");

    assertThat(stuck.isWetBy(6 * HOUR)).isFalse();
    assertThat(litres(stuck, 0)).isZero();
    assertThat(stuck.isWetBy(7 * HOUR)).isTrue();
    assertThat(litres(stuck, 1)).isCloseTo(10, within(0.7));
  }

  @Test
  void anAbsenceShorterThanTheOneDrawnIsNoLonger() throws BaselineProblem {
    AbsenceResult alone = after(houseWithATap().away(30 * DAY).draw(), DAY);
    assertThat(litres(known(alone, "stuck-open.float"), 0)).isCloseTo(520, within(1.0));
  }

  @Test
  void thatNobodyComesBackAndWhatIsSwitchedOffAreNotAsked() throws BaselineProblem {
    Installation house = houseWithATap().draw();
    FailureSettings usual = house.failureSettings();
    Installation silenced =
        house.withFailureSettings(
            new FailureSettings(
                List.of(new FailureSettings.Skipped("stuck-open.float", "two floats in a row")),
                usual.topUps(),
                usual.sequences(),
                usual.dripArea(),
                usual.outage(),
                usual.surge()));
    assertThat(after(silenced, DAY).failures().stream().map(LeftAlone::failure))
        .extracting(FailureNames::id)
        .isNotEmpty()
        .doesNotContain("stuck-open.float", "nobody-comes-back.building");
  }

  /** A sequence counts from its beginning: what happens after the absence does not. */
  @Test
  void ofASequenceOnlyWhatHappensByThenCounts() throws BaselineProblem {
    Installation house =
        InTurn.in(houseWithATap().draw())
            .begins(0, "half-clogged.overflow")
            .begins(2 * DAY, "stuck-open.float")
            .drawing();
    AbsenceResult result = after(house, DAY, 3 * DAY);
    LeftAlone.Known sequence = known(result, "sequence.in-turn");

    assertThat(litres(sequence, 0)).isZero();
    assertThat(litres(sequence, 1)).isCloseTo(520, within(1.0));
  }

  /**
   *
   *
   * <pre>
   * The sensor in the tray stops the return pump without any leak. Nothing breaks the siphon, so the
   * display drains to the return's outlet at 550 mm. Of 882.702 L (758.520 in the display, 120 in
   * the sump, 4.182 in the return) 693.161 stay above, with what stands in the short leg. The sump
   * holds 160 L to its rim at 400 mm and the long leg beside it 0.402 + 0.35/4.48 · 3.6191 = 0.685:
   *   882.702 − 693.161 − 160.685 = 28.856 L go over its rim, of which the tray holds 8.
   * </pre>
   */
  @Test
  void aSensorThatStopsThePumpStartsADrainDownOntoTheFloor() throws BaselineProblem {
    AbsenceResult result = after(withSensor(r -> {}).draw(), 3 * DAY);
    LeftAlone.Known falsely = known(result, "acts-falsely.sensor");

    assertThat(litres(falsely, 0)).isCloseTo(20.856, within(0.2));
    GuardsAtWork.Compared sensor = compared(falsely);
    assertThat(sensor.acted()).containsExactly("sensor");
    assertThat(sensor.without()).isZero();
    assertThat(sensor.firstWetWithout()).isEmpty();
    assertThat(sensor.worth()).isEqualTo(GuardsAtWork.Worth.MAKES_WORSE);
  }

  /**
   * A drip that the tray's drain carries off for three days wets no floor. The sensor feels it, and
   * the drain-down is more than that drain takes.
   */
  @Test
  void aDripThatADrainTakesBecomesAFloodByTheSensor() throws BaselineProblem {
    Installation house =
        withSensor(r -> r.joint("union", 1, 0.55, "tray"))
            .drain("gully", -0.5)
            .run("tray-drain", r -> r.fromLip("tray", 0.005).toDrain("gully").bore(0.02).length(1))
            .draw();
    LeftAlone.Known drip = known(after(house, 3 * DAY), "joint-drips.return.union");
    GuardsAtWork.Compared sensor = compared(drip);

    assertThat(sensor.with()).isGreaterThan(1e-3);
    assertThat(sensor.without()).isZero();
    assertThat(sensor.worth()).isEqualTo(GuardsAtWork.Worth.MAKES_WORSE);
  }

  /** Behind a siphon break the same sensor saves most of what the pump would send out. */
  @Test
  void aSensorSavesWhatThePumpWouldSendOutOfAPartedUnion() throws BaselineProblem {
    Installation house =
        withSensor(
                r ->
                    r.joint("union", 1, 0.55, "tray")
                        .siphonBreak("break", 5.15, "display", 0.59, 0.012))
            .draw();
    LeftAlone.Known parts = known(after(house, 3 * DAY), "joint-parts.return.union");
    GuardsAtWork.Compared sensor = compared(parts);

    assertThat(sensor.worth()).isEqualTo(GuardsAtWork.Worth.SAVES);
    assertThat(sensor.saves()).isGreaterThan(0.05);
  }

  @Test
  void whereNoGuardActsThereIsNothingToCompare() throws BaselineProblem {
    LeftAlone.Known lost = known(after(withSensor(r -> {}).draw(), DAY), "seam-leaks.display");
    assertThat(lost.firstWet()).isPresent();
    assertThat(lost.guards()).isEmpty();
  }

  /** Of two that have brought as much by then, the one that goes on. */
  @Test
  void theSameWaterThatGoesOnIsWorse() {
    LeftAlone.Known over = hundredLitres(new Failure.WallFails("vat"), 0);
    LeftAlone.Known goesOn = hundredLitres(new Failure.SeamLeaks("pool"), 1e-5);

    assertThat(new AbsenceResult(List.of(DAY), List.of(over, goesOn)).worstBy(DAY))
        .contains(goesOn);
  }

  private static LeftAlone.Known hundredLitres(Failure failure, double rate) {
    return new LeftAlone.Known(
        failure,
        List.of(0.1),
        List.of(new HowBad(1, 0.1, rate, 0.02)),
        OptionalDouble.of(HOUR),
        Optional.empty());
  }

  @Test
  void theWorstIsTheFirstInTheListOfFailures() throws BaselineProblem {
    for (Installation house : List.of(houseWithATap().draw(), withSensor(r -> {}).draw())) {
      Conditions usual = house.conditions();
      Installation aDay = house.withConditions(new Conditions(usual.celsius(), DAY));
      Failure first =
          Sweep.everyFailure(aDay, 1, Progress.NONE).worstFirst().stream()
              .map(FailureResult::failure)
              .filter(failure -> !(failure instanceof Failure.NobodyComesBack))
              .findFirst()
              .orElseThrow();

      assertThat(after(aDay, DAY).worstBy(DAY).map(LeftAlone.Known::failure)).contains(first);
    }
  }

  /** 1 m² of water, 200 mm below its rim, topped up by a float from a tap of 0.5 L/min. */
  private static Plan houseWithATap() {
    return Plan.of("Vat under a tap")
        .storey("ground", 0)
        .floor("room", 100)
        .source("tap", 1.5, 0.5e-3 / 60)
        .vessel("vat", box(1.25, 0.8, 1), v -> v.in("room").raised(0.1).level(0.8).fresh())
        .vessel("pool", box(1, 1, 0.5), v -> v.in("room").raised(1.2).level(0.2).fresh())
        .run("overflow", r -> r.fromLip("pool", 0.3).to("vat", 1.1).bore(0.03).length(1))
        .run(
            "fill",
            r ->
                r.fromSupply("tap")
                    .to("vat", 1.2)
                    .bore(0.012)
                    .length(2)
                    .floatValve("float", 1, 0.4, "vat", 0.8, 0.05));
  }

  /** A display over a sump in a flat tray, whose sensor stops the return pump. */
  private static Plan withSensor(Consumer<RunPlan> more) {
    return Plan.of("Sensor in the tray")
        .storey("ground", 0)
        .floor("cellar", 20)
        .storey("upper", 3)
        .floor("hall", 40)
        .circuit("main")
        .basin("tray", box(1, 0.8, 0.01), "cellar")
        .vessel("display", box(1.8, 0.7, 0.65), v -> v.in("hall").raised(0.8).level(0.602))
        .vessel("sump", box(0.8, 0.5, 0.4), v -> v.in("tray").raised(0.02).level(0.3))
        .run("drain", r -> r.fromLip("display", 0.6).to("sump", 0.39).bore(0.05).length(4.5))
        .run(
            "return",
            r -> {
              r.from("sump", 0.05)
                  .to("display", 0.55)
                  .length(5.2)
                  .by(0.07, 0.5)
                  .by(4.55, 5.0)
                  .pump("return-pump", 0.2, "main", 0, 7, 0.6, 5, 1.2, 0);
              more.accept(r);
            })
        .control(
            new Control.LeakSensor("sensor", "sensor", "tray", 0.002, 0, List.of("return-pump")));
  }

  private static AbsenceResult after(Installation house, Double... times) throws BaselineProblem {
    return Absences.of(house, List.of(times), 1, Progress.NONE);
  }

  private static LeftAlone.Known known(AbsenceResult result, String id) {
    return result.known().stream()
        .filter(failure -> FailureNames.id(failure.failure()).equals(id))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no answer to " + id));
  }

  private static GuardsAtWork.Compared compared(LeftAlone.Known failure) {
    return failure
        .guards()
        .map(GuardsAtWork.Compared.class::cast)
        .orElseThrow(() -> new AssertionError("nothing acted"));
  }

  private static double litres(LeftAlone.Known failure, int absence) {
    return 1000 * failure.onFloors().get(absence);
  }
}
