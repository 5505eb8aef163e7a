package dryfloor.analysis.outcome;

import static dryfloor.analysis.installation.Plan.box;
import static dryfloor.analysis.installation.WaterAssert.assertBeyond;
import static dryfloor.analysis.installation.WaterAssert.assertLevel;
import static dryfloor.analysis.installation.WaterAssert.assertLitresIn;
import static dryfloor.analysis.installation.WaterAssert.assertLitresOn;
import static dryfloor.analysis.installation.WaterAssert.assertSalinity;
import static dryfloor.analysis.installation.WaterAssert.assertSpilled;
import static dryfloor.analysis.installation.WaterAssert.assertSupplied;
import static dryfloor.analysis.installation.WaterAssert.carried;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureCatalogue;
import dryfloor.analysis.installation.DisplayAboveSump;
import dryfloor.analysis.installation.Plan;
import dryfloor.analysis.installation.RunPlan;
import dryfloor.analysis.installation.Trial;
import dryfloor.analysis.installation.WaterAssert;
import dryfloor.analysis.outcome.StoryEvent.What;
import dryfloor.model.Installation;
import dryfloor.model.element.Control;
import dryfloor.model.element.Control.LevelSwitch.Action;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Pumps side by side, pumps that suck air, switches that cycle and fresh water that dilutes. */
class PumpsAndControlsTest {

  // Two pumps feed one line to the display; each has its own branch to a tee.

  @Test
  void aPumpThatStopsLetsTheOtherPushBackThroughIt() {
    Outcome normal = Trial.normal(twoPumps(false).draw());
    Outcome outcome = Trial.after(twoPumps(false).draw(), new Failure.PumpStops("pump-2"));

    assertThat(carried(normal, "branch-2", "sump", "tee")).isGreaterThan(0);
    assertThat(carried(outcome, "branch-2", "tee", "sump"))
        .as("back through the stopped pump")
        .isGreaterThan(0.01);
    assertThat(Trial.happened(outcome, What.RUNS_BACKWARDS, "branch-2")).isTrue();
    assertThat(outcome.verdict()).isEqualTo(Verdict.DRY);
  }

  @Test
  void aCheckValveBehindTheStoppedPumpHolds() {
    Outcome outcome = Trial.after(twoPumps(true).draw(), new Failure.PumpStops("pump-2"));

    assertThat(carried(outcome, "branch-2", "tee", "sump")).isZero();
    assertThat(outcome.verdict()).isEqualTo(Verdict.DRY);
  }

  @Test
  void twoEqualPumpsShareTheFlowEqually() {
    Outcome normal = Trial.normal(twoPumps(true).draw());

    double first = carried(normal, "branch-1", "sump", "tee");
    double second = carried(normal, "branch-2", "sump", "tee");
    assertThat(first).isGreaterThan(0.1).isCloseTo(second, withPercentage(1e-6));
    assertThat(carried(normal, "riser", "tee", "display"))
        .isCloseTo(first + second, withPercentage(1e-6));
  }

  private static Plan twoPumps(boolean checks) {
    Plan plan =
        Plan.of("Two pumps")
            .storey("ground", 0)
            .floor("room", 50)
            .circuit("main")
            .vessel("display", box(2, 1, 0.8), v -> v.in("room").raised(2).level(0.702))
            .vessel("sump", box(1.5, 0.8, 0.8), v -> v.in("room").level(0.5))
            .junction("tee", 0.6)
            .run("drain", r -> r.fromLip("display", 0.7).to("sump", 0.7).bore(0.063).length(2))
            .run("riser", r -> r.fromJunction("tee").to("display", 0.65).length(3).bore(0.04));
    for (int i = 1; i <= 2; i++) {
      String pump = "pump-" + i;
      plan.run("branch-" + i, r -> branch(r, pump, checks));
    }
    return plan;
  }

  private static void branch(RunPlan r, String pump, boolean check) {
    r.from("sump", 0.1).toJunction("tee").length(1);
    r.pump(pump, 0.2, "main", 0, 4, 0.5, 3, 1, 0);
    if (check) {
      r.checkValve("check-" + pump, 0.5);
    }
  }

  @Test
  void aPumpThatLosesItsPrimeStopsForGood() {
    // 40 L are pumped out of a tank at 1 m to one above until the inlet at 100 mm is bare; the
    // float that calls for the pump is stuck. The line, 0.2 L/m, stays full behind its check valve.
    Outcome outcome = Trial.after(transfer().draw(), new Failure.LevelSwitchStuckLow("float"));

    assertThat(Trial.happened(outcome, What.LOSES_PRIME, "transfer-pump")).isTrue();
    assertThat(outcome.dryPumps()).hasSize(1);
    assertLevel(outcome, "store").isCloseToMillimetres(100);
    // All but what the line holds has arrived: 0.5 m² · 200 mm.
    assertLitresIn(outcome, "header").isWithin(0.5, 100 + 100);
    assertThat(outcome.ending()).isInstanceOf(Ending.AtRest.class);
  }

  private static Plan transfer() {
    return Plan.of("Transfer")
        .storey("ground", 0)
        .floor("room", 50)
        .circuit("main")
        .vessel("store", box(1, 0.5, 0.5), v -> v.in("room").level(0.3).fresh())
        .vessel("header", box(1, 0.5, 0.5), v -> v.in("room").raised(1).level(0.2).fresh())
        .run(
            "lift",
            r ->
                r.from("store", 0.1)
                    .to("header", 0.45)
                    .bore(0.016)
                    .length(1.6)
                    .pumpThatLosesPrime("transfer-pump", 0.1, "main", 0, 3, 0.3, 0)
                    .checkValve("foot", 0.05))
        .levelSwitch("float", "header", 0.1, 0.15, Action.FILLS, "transfer-pump");
  }

  @Test
  void aPumpOnItsFloatCyclesAndIsSeenToRepeatItself() {
    // A pit of 0.25 m² gets 20 mL/s from a supply and is pumped out between 200 and 300 mm:
    // it fills 25 L in 1250 s; the pump, 0.5 L/s and a little less, takes 25/(0.5 − 0.02) = 52 s.
    Outcome outcome = Trial.normal(pit().draw());

    assertThat(outcome.ending()).isInstanceOf(Ending.Continues.class);
    double in = 72 * 3600 * 20e-6 * 1000;
    assertSupplied(outcome, "seep").isCloseToLitres(in);
    assertThat(outcome.trajectory().moments()).isLessThan(3000);
  }

  private static Plan pit() {
    return Plan.of("Pit")
        .storey("ground", 0)
        .floor("room", 50)
        .circuit("main")
        .source("seep", 1, 20e-6)
        .drain("sewer", 1)
        .vessel("pit", box(0.5, 0.5, 0.6), v -> v.in("room").level(0.25).fresh())
        .run("inlet", r -> r.fromSupply("seep").to("pit", 0.55).bore(0.02))
        .run(
            "lift",
            r ->
                r.from("pit", 0.05)
                    .toDrain("sewer")
                    .by(1.2, 1.3)
                    .length(1.5)
                    .dosingPump("lifter", 0.1, "main", 0.499, 10, 0.501, 0))
        .levelSwitch("pit-float", "pit", 0.2, 0.3, Action.EMPTIES, "lifter");
  }

  @Test
  void aSwitchThatDrainsAndRefillsBetweenTwoVesselsRepeatsItself() {
    // A lifter between 200 and 300 mm fills a vessel above whose hole feeds it back: no water
    // comes from outside, and the cycle has a period.
    Outcome outcome = Trial.normal(tide(Action.EMPTIES).draw());

    assertThat(outcome.ending()).isInstanceOf(Ending.Repeats.class);
    Ending.Repeats cycle = (Ending.Repeats) outcome.ending();
    assertThat(cycle.period()).isBetween(30.0, 3000.0);
    assertThat(outcome.verdict()).isEqualTo(Verdict.DRY);
  }

  @Test
  void aGuardThatLocksOutStaysOffWhenTheWaterComesBack() {
    // The lifter takes the lower vessel down to 200 mm. One guard lets it go again at 300 mm, over
    // and over; the other leaves it off, and all comes back: 77.5 L + 25 L over 0.25 m² are 410 mm.
    Outcome again = Trial.normal(tide(Action.STOPS_WHEN_LOW).draw());
    Outcome locked = Trial.normal(tide(Action.LOCKS_OUT_WHEN_LOW).draw());

    assertThat(again.ending()).isInstanceOf(Ending.Repeats.class);
    assertThat(locked.ending()).isInstanceOf(Ending.AtRest.class);
    assertLevel(locked, "low").isWithin(0.5, 410);
    assertThat(FailureCatalogue.of(tide(Action.LOCKS_OUT_WHEN_LOW).draw()))
        .contains(new Failure.LevelSwitchStuckLow("float"))
        .doesNotContain(new Failure.LevelSwitchChatters("float"));
  }

  private static Plan tide(Action action) {
    return Plan.of("Tide")
        .storey("ground", 0)
        .floor("room", 50)
        .circuit("main")
        .vessel("low", box(0.5, 0.5, 0.6), v -> v.in("room").level(0.31).fresh())
        .vessel("high", box(0.5, 0.5, 0.6), v -> v.in("room").raised(1).level(0.1).fresh())
        .run("back", r -> r.from("high", 0).to("low", 0.55).bore(0.012).length(1))
        .run(
            "lift",
            r ->
                r.from("low", 0.05)
                    .to("high", 0.55)
                    .length(1.6)
                    .checkValve("foot", 0.05)
                    .pump("lifter", 0.1, "main", 0, 3, 0.8, 0))
        .levelSwitch("float", "low", 0.2, 0.3, action, "lifter");
  }

  @Test
  void freshTopOffThatRunsOnDilutesByItsVolume() {
    // 300 L at 35 g/kg get all the 60 L that the store holds above its inlet:
    // S = 35 · 300/(300 + 60) = 29.167, all in one vessel, nothing spilled.
    Outcome outcome =
        Trial.after(topOff(0.8).draw(), new Failure.LevelSwitchStuckLow("top-off-switch"));

    assertThat(outcome.verdict()).isEqualTo(Verdict.DRY);
    assertLitresIn(outcome, "tank").isWithin(0.15, 360);
    assertSalinity(outcome, "tank").isWithin(0.02, 29.167);
  }

  @Test
  void freshTopOffIntoABrimfulTankWashesItsSaltOut() {
    // The tank's rim is at 600 mm: from 300 L it fills to 300 L + 0 of headroom, then spills what
    // it gets. Well mixed, dS/dV = −S/V: S = 35 · exp(−60/300) = 28.656 while 60 L go over. The
    // last millimetre over the rim counts as headroom and runs off again.
    Outcome outcome =
        Trial.after(topOff(0.6).draw(), new Failure.LevelSwitchStuckLow("top-off-switch"));

    assertSpilled(outcome, "tank").isWithin(0.15, 60);
    assertLitresOn(outcome, "room").isWithin(0.15, 60);
    assertSalinity(outcome, "tank").isWithin(0.03, 28.656);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.02, 0.06})
  void aLandingThatHoldsNoMillilitreIsWetFromTheFirstWaterOn(double bore) {
    // 1 cm² without a sill lets all go on. The pump brings up to 1 L/s, which leaves by the slipped
    // hose: a millilitre is there within a second. It ends when the lower tank of 0.5 m² has fallen
    // from 400 mm to the pump's inlet at 50 mm, and the upper one stands at its lip: 175 L.
    Installation installation =
        Plan.of("Two tanks on a landing")
            .storey("ground", 0)
            .floor("landing", 1e-4, 0, Plan.BEYOND)
            .circuit("main")
            .vessel("upper", box(1, 0.5, 1), v -> v.in("landing").raised(1).level(0.6))
            .vessel("lower", box(1, 0.5, 1), v -> v.in("landing").level(0.4))
            .run(
                "lift",
                r ->
                    r.from("lower", 0.05)
                        .to("upper", 0.9)
                        .bore(0.02)
                        .length(3)
                        .pump("lift-pump", 0.1, "main", 0, 4, 1, 0))
            .run("hose", r -> r.fromLip("upper", 0.6).to("lower", 0.5).bore(bore).length(2))
            .draw();

    Outcome outcome =
        Trial.after(installation, new Failure.EndSlipsOut("hose", Failure.End.SECOND));

    assertThat(outcome.firstWetFloor().orElseThrow()).isBetween(0.0, 1.0);
    assertBeyond(outcome).isCloseToLitres(175);
  }

  /** A tank of 0.5 m² at 600 mm; a store of 0.2 m² with 300 mm over its pump's inlet. */
  private static Plan topOff(double rim) {
    return topOff(rim, r -> r.pump("top-off-pump", 0.1, "main", 0, 2, 0.02, 0));
  }

  private static Plan topOff(double rim, Consumer<RunPlan> withPump) {
    return Plan.of("Top-off")
        .storey("ground", 0)
        .floor("room", 50)
        .circuit("main")
        .vessel("tank", box(1, 0.5, rim), v -> v.in("room").level(0.6))
        .vessel("store", box(0.5, 0.4, 0.5), v -> v.in("room").level(0.35).fresh())
        .run(
            "top-off",
            r -> {
              r.from("store", 0.05).to("tank", 0.9).bore(0.008).length(1.2);
              withPump.accept(r);
            })
        .levelSwitch("top-off-switch", "tank", 0.58, 0.595, Action.FILLS, "top-off-pump");
  }

  @Test
  void aTopOffHoseThatNobodyCallsForIsDryAndSaysWhyAndWhereItsWaterGoes() {
    // A dosing pump lets nothing through while it stands, so the hose on the floor is no siphon.
    Installation installation =
        topOff(1, r -> r.dosingPump("top-off-pump", 0.1, "main", 0, 2, 0.02, 0)).draw();
    Failure slips = new Failure.EndSlipsOut("top-off", Failure.End.SECOND);

    Outcome idle = Trial.after(installation, slips);
    Outcome called =
        Trial.after(installation, slips, new Failure.LevelSwitchStuckLow("top-off-switch"));

    assertThat(idle.verdict()).isEqualTo(Verdict.DRY);
    assertThat(idle.notes()).containsExactly(new Note.NeverRan("top-off", "room"));
    // 0.2 m² of store from 350 mm down to the pump at 50 mm: 60 L, all on the floor.
    assertThat(called.verdict()).isEqualTo(Verdict.WET);
    assertLitresOn(called, "room").isWithin(0.2, 60);
    assertThat(called.notes()).isEmpty();
  }

  @Test
  void aHoseThatSlipsToTheFloorEmptiesThroughItsIdlePumpAndHoldsNothingBack() {
    // A centrifugal pump is an open passage while it stands. The hose held 19.6 cm² · 0.3 m of
    // the store's water above its inlet, and on the floor runs downhill all the way: 0.2 m² of
    // store from 900 mm down to its inlet at 600 mm, and what stood in the hose, lie on the floor.
    Installation installation =
        Plan.of("Hose on the floor")
            .storey("ground", 0)
            .floor("room", 1e4)
            .circuit("main")
            .vessel("tank", box(1, 0.5, 0.8), v -> v.in("room").raised(1.2).level(0.6))
            .vessel("store", box(0.5, 0.4, 0.5), v -> v.in("room").raised(0.5).level(0.4))
            .run(
                "hose",
                r ->
                    r.from("store", 0.1)
                        .to("tank", 0.7)
                        .bore(0.05)
                        .length(1.3)
                        .pump("hose-pump", 0.1, "main", 0, 2, 0.02, 0))
            .levelSwitch("tank-low", "tank", 0.5, 0.55, Action.FILLS, "hose-pump")
            .draw();

    Outcome outcome =
        Trial.after(installation, new Failure.EndSlipsOut("hose", Failure.End.SECOND));

    Ledger.Standing hose =
        outcome.ledger().standing().stream().filter(s -> s.id().equals("hose")).toList().getFirst();
    assertThat(hose.before()).isCloseTo(0.59e-3, withPercentage(1));
    assertThat(hose.after()).isLessThan(1e-5);
    assertLevel(outcome, "store").isWithin(0.2, 100);
    assertLitresOn(outcome, "room").isWithin(0.1, 60.6);
  }

  @Test
  void aLeakSensorStopsThePumpAndADeadOneDoesNot() {
    Plan plan =
        topOff(0.6)
            .control(
                new Control.LeakSensor(
                    "sensor", "sensor", "room", 5e-4, 10, java.util.List.of("top-off-pump")));
    Failure stuck = new Failure.LevelSwitchStuckLow("top-off-switch");

    Outcome guarded = Trial.after(plan.draw(), stuck);
    Outcome unguarded = Trial.after(plan.draw(), stuck, new Failure.LeakSensorDoesNotAct("sensor"));

    // 0.5 mm on 50 m² are 25 L; 10 s more at under 20 mL/s are 0.2 L.
    assertLitresOn(guarded, "room").isWithin(0.4, 25.2);
    assertLitresOn(unguarded, "room").isWithin(0.15, 60);
  }

  @Test
  void aTimerCutsTheTopOffShort() {
    Plan plan =
        topOff(0.8)
            .control(new Control.Timer("timer", "timer", 600, java.util.List.of("top-off-pump")));

    Outcome outcome = Trial.after(plan.draw(), new Failure.LevelSwitchStuckLow("top-off-switch"));

    double added = carried(outcome, "top-off", "store", "tank");
    assertThat(Trial.timeOf(outcome, What.ACTS, "timer")).isCloseTo(600, within(0.01));
    assertThat(added).isBetween(0.002, 0.012);
    assertThat(WaterAssert.vessel(outcome, "tank").levelAfter()).isLessThan(0.63);
  }

  @Test
  void aCircuitWithABackupKeepsItsPumpWhileItLasts() {
    // The display's pump lives on for 900 s after the building has lost power; then it is as if
    // the power had gone just then.
    Plan plan = new DisplayAboveSump().plan();
    Outcome all = Trial.after(plan.draw(), new Failure.BuildingLosesPower());
    Outcome returnOnly = Trial.after(plan.draw(), new Failure.CircuitTrips("main"));

    // The skimmer keeps its 6 L and its pipe's water; the rest is as after a power loss, lower by
    // what the skimmer holds more: 6 + (0.804 − (z' − 0.1)/0.3 · 0.804) L over 703.49 L/m.
    //   700 z + 0.402 + (z − 0.05)/4.48 · 3.6191 + 6.804 = 243.246  →  700.8078 z = 236.0804
    assertLevel(returnOnly, "sump").isCloseToMillimetres(336.869);
    assertLevel(returnOnly, "display").isCloseToMillimetres(585.105);
    assertThat(WaterAssert.vessel(all, "sump").levelAfter())
        .isGreaterThan(WaterAssert.vessel(returnOnly, "sump").levelAfter());
  }

  @Test
  void aCirculationPumpTurnedUpThrowsWaterOutDownToItsInlet() {
    // Down to its inlet at 560 mm: (level in normal operation − 560 mm) · 1.26 m² of the display,
    // made up from the chamber as long as the return pump has water: the drain falls dry at its lip
    // of 600 mm and the chamber is emptied to its inlet at 50 mm. Left in place (L): display
    // 705.600, sump 120, chamber 15, pipes and skimmer 10.986: 851.586; 980.506 − 851.586 = 128.920
    // on the floor of the hall.
    Plan plan =
        new DisplayAboveSump().plan().circulationPump("stream", "display", 0.56, 1e-3, "main");

    Outcome outcome = Trial.after(plan.draw(), new Failure.CirculationPumpThrowsWaterOut("stream"));

    assertThat(outcome.verdict()).isEqualTo(Verdict.WET);
    assertLevel(outcome, "display").isCloseToMillimetres(560);
    assertLevel(outcome, "chamber").isCloseToMillimetres(50);
    assertThat(outcome.onFloors() * 1000).isCloseTo(128.920, withPercentage(0.25));
  }
}
