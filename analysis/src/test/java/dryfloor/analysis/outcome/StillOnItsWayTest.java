package dryfloor.analysis.outcome;

import static dryfloor.analysis.installation.WaterAssert.carried;
import static dryfloor.analysis.installation.WaterAssert.vessel;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.installation.DisplayAboveSump;
import dryfloor.analysis.installation.Named;
import dryfloor.analysis.installation.Plan;
import dryfloor.analysis.installation.Trial;
import dryfloor.analysis.outcome.StoryEvent.What;
import dryfloor.model.Installation;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What still runs down once the pump stands. */
class StillOnItsWayTest {

  /**
   * The check valve keeps the return full, so the display falls to its lip of 600 mm and all that
   * leaves it, 1.26 m² times its height above the lip, comes down the drain.
   */
  @Test
  void theDisplayRunsOverUntilItStandsAtItsLip() {
    Installation installation = new DisplayAboveSump().withCheckValve().plan().draw();

    Outcome outcome = Trial.after(installation, new Failure.BuildingLosesPower());

    StoryEvent told = runsOut(outcome).getFirst();
    Outcome.VesselOutcome display = vessel(outcome, "display");
    double aboveLip = display.levelBefore() - display.bottom() - 0.6;
    assertThat(runsOut(outcome)).hasSize(1);
    assertThat(told.subject()).isEqualTo("drain");
    assertThat(told.other()).isEqualTo("sump");
    assertThat(told.time()).isZero();
    assertThat(told.volume().orElseThrow()).isCloseTo(1.26 * aboveLip, withPercentage(0.5));
    assertThat(aboveLip).isGreaterThan(0.005);
  }

  /**
   * For ten minutes the pump runs on from a backup; what it circulates meanwhile is not counted.
   */
  @Test
  void whatTheBackupStillLiftsIsNotOnItsWay() {
    Installation installation = withBackup(600).draw();

    Outcome outcome = Trial.after(installation, new Failure.BuildingLosesPower());

    StoryEvent told = runsOut(outcome).getFirst();
    Outcome.VesselOutcome high = vessel(outcome, "high");
    double aboveLip = high.levelBefore() - high.bottom() - 0.4;
    assertThat(told.time()).isCloseTo(600, within(1.0));
    assertThat(told.volume().orElseThrow()).isCloseTo(0.5 * aboveLip, withPercentage(0.5));
    assertThat(carried(outcome, "drain", "high", "low")).isGreaterThan(0.2);
  }

  /**
   * The filter pump goes on, but it gives the vessel back what it takes: that feeds no overflow.
   */
  @Test
  void aPumpThatStirsTheVesselDoesNotDriveItsOverflow() {
    Installation installation =
        withBackup(0)
            .circuit("filter")
            .run(
                "loop",
                r ->
                    r.from("high", 0.05)
                        .to("high", 0.3)
                        .pump("filter-pump", 0.2, "filter", 0, 2, 0.2, 1))
            .draw();

    Outcome outcome = Trial.after(installation, new Failure.CircuitTrips("main"));

    StoryEvent told = runsOut(outcome).getFirst();
    Outcome.VesselOutcome high = vessel(outcome, "high");
    double aboveLip = high.levelBefore() - high.bottom() - 0.4;
    assertThat(told.time()).isZero();
    assertThat(told.volume().orElseThrow()).isCloseTo(0.5 * aboveLip, withPercentage(0.5));
  }

  private static Plan withBackup(double seconds) {
    return Plan.of("Backup")
        .storey("ground", 0)
        .floor("room", 20)
        .circuit("main", seconds)
        .vessel("low", Plan.box(1, 0.5, 0.6), v -> v.in("room").level(0.3))
        .vessel("high", Plan.box(1, 0.5, 0.6), v -> v.in("room").raised(1.5).level(0.42))
        .run(
            "return",
            r ->
                r.from("low", 0.05)
                    .to("high", 0.55)
                    .length(3)
                    .pump("pump", 0.2, "main", 0, 4, 0.5, 2)
                    .checkValve("check", 0.4))
        .run("drain", r -> r.fromLip("high", 0.4).to("low", 0.5).bore(0.05).length(1.5));
  }

  @Test
  void whatGoesRoundAndRoundIsNotOnItsWay() {
    Outcome outcome = Trial.after(DisplayAboveSump.asDrawn(), new Failure.CircuitTrips("skimming"));

    assertThat(carried(outcome, "drain", "display", "sump")).isPositive();
    assertThat(runsOut(outcome)).isEmpty();
  }

  /** A vessel that somebody lets run empty is no water on its way. */
  @Test
  void aTapLeftOpenIsNotOnItsWay() {
    Installation installation =
        Plan.of("Tap")
            .storey("ground", 0)
            .floor("room", 20)
            .vessel("vat", Plan.box(1, 1, 0.6), v -> v.in("room").raised(1).level(0.5))
            .vessel("low", Plan.box(1, 1, 1), v -> v.in("room").level(0.1))
            .run("tail", r -> r.from("vat", 0).to("low", 0.9).length(1).valve("tap", 0.5, 0))
            .draw();

    Outcome outcome = Trial.after(installation, new Failure.ValveLeftOpen("tap"));

    assertThat(carried(outcome, "tail", "vat", "low")).isGreaterThan(0.45);
    assertThat(runsOut(outcome)).isEmpty();
  }

  /**
   * 20 m of 50 mm at 2 % behind a fall of half a metre. The pump lifts 1.25 L/s. Full, at n =
   * 0.010, the pipe carries 100 · 1.9635e-3 · 0.0125^(2/3) · √0.02 = 1.496 L/s; 0.836 of that runs
   * at a depth of 0.69 of the bore and an area of 0.737 of it (hydraulic elements of a circle: Chow
   * 1959, from memory): 20 m · 0.737 · 1.9635 L/m = 28.9 L, and 0.5 m upright some 0.2 L more. On
   * 0.5 m² they are 58 mm.
   */
  @Test
  void whatRunsInALongFlatDrainIsNotedBesideTheLevels() {
    Installation installation =
        Plan.of("Long drain")
            .storey("ground", 0)
            .floor("room", 40)
            .circuit("main")
            .vessel("low", Plan.box(1, 0.5, 0.6), v -> v.in("room").level(0.3))
            .vessel("high", Plan.box(1, 0.5, 0.6), v -> v.in("room").raised(1.5).level(0.4))
            .run(
                "lift",
                r ->
                    r.from("low", 0.05)
                        .to("high", 0.55)
                        .length(3)
                        .dosingPump("pump", 0.2, "main", 0, 1000, 1.25, 999, 1.2501, 0))
            .run(
                "drain",
                r -> r.fromLip("high", 0.4).to("low", 1).bore(0.05).by(1.4, 0.5).length(20.5))
            .draw();

    Outcome outcome = Trial.after(installation, new Failure.BuildingLosesPower());

    Note.RunPartlyFull note =
        outcome.notes().stream()
            .filter(Note.RunPartlyFull.class::isInstance)
            .map(Note.RunPartlyFull.class::cast)
            .findFirst()
            .orElseThrow();
    assertThat(note.runs()).containsExactly("drain");
    assertThat(note.vessel()).isEqualTo("low");
    assertThat(note.volume() * 1000).isCloseTo(29.1, withPercentage(2));
    assertThat(note.rise() * 1000).isCloseTo(58, withPercentage(2));
  }

  @ParameterizedTest
  @MethodSource("dryfloor.analysis.installation.Named#small")
  void noMoreRunsOutThanTheLedgerSaysCameOut(Named named) {
    for (Failure failure : named.failures()) {
      Outcome outcome = Trial.after(named.installation(), failure);
      for (StoryEvent told : runsOut(outcome)) {
        double cameOut =
            outcome.ledger().entries().stream()
                .filter(e -> e.path().equals(told.subject()) && e.to().equals(told.other()))
                .mapToDouble(Ledger.Entry::volume)
                .sum();
        double emptied =
            outcome.story().stream()
                .filter(e -> e.what() == What.RUN_EMPTIES && e.time() >= told.time())
                .filter(e -> e.subject().equals(told.subject()) && e.other().equals(told.other()))
                .mapToDouble(e -> e.volume().orElseThrow())
                .sum();
        assertThat(told.volume().orElseThrow() + emptied)
            .as(failure + ": " + told)
            .isLessThanOrEqualTo(cameOut + 1e-6);
      }
    }
  }

  private static List<StoryEvent> runsOut(Outcome outcome) {
    return outcome.story().stream().filter(event -> event.what() == What.RUNS_OUT).toList();
  }
}
