package dryfloor.analysis.failure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dryfloor.analysis.failure.Effect.CircuitOff;
import dryfloor.analysis.failure.Effect.CircuitOn;
import dryfloor.analysis.failure.Effect.EndMoved;
import dryfloor.analysis.failure.Effect.IgnoresControls;
import dryfloor.analysis.failure.Effect.Poured;
import dryfloor.analysis.failure.Effect.RunLeaks;
import dryfloor.analysis.failure.Effect.RunNarrowed;
import dryfloor.analysis.failure.Effect.RunParted;
import dryfloor.analysis.failure.Effect.Thrown;
import dryfloor.analysis.failure.Effect.ValveFrozen;
import dryfloor.analysis.failure.Effect.ValveHeld;
import dryfloor.analysis.failure.Effect.VesselLeaks;
import dryfloor.model.Installation;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class FailureResolverTest {

  private static final Installation SHOWROOM = Showroom.installation();

  private static List<Effect> effects(Failure failure) {
    return FailureResolver.resolve(SHOWROOM, failure);
  }

  @Test
  void eachCircuitGoesOutWhenItsBackupIsUsedUp() {
    assertThat(effects(new Failure.BuildingLosesPower()))
        .containsExactlyInAnyOrder(new CircuitOff("main", 0), new CircuitOff("life", 600));
  }

  @Test
  void everythingRestartsAtTheEndOfTheOutage() {
    assertThat(effects(new Failure.BuildingLosesPowerForAWhile()))
        .containsExactlyInAnyOrder(
            new CircuitOff("main", 0),
            new CircuitOff("life", 600),
            new CircuitOn("main", 1200),
            new CircuitOn("life", 1200));
  }

  @Test
  void flickersCutThreeTimesAndTheBackupBridgesThem() {
    assertThat(effects(new Failure.PowerFlickers()))
        .containsExactly(
            new CircuitOff("main", 0),
            new CircuitOn("main", 30),
            new CircuitOff("main", 90),
            new CircuitOn("main", 120),
            new CircuitOff("main", 180),
            new CircuitOn("main", 210));
  }

  @Test
  void onBackupOnlyTheOtherCircuitsGoOut() {
    assertThat(effects(new Failure.OnlyBackupRuns())).containsExactly(new CircuitOff("main", 0));
  }

  @Test
  void aTrippedCircuitHasNoUseForItsBackup() {
    assertThat(effects(new Failure.CircuitTripsForAWhile("life")))
        .containsExactly(new CircuitOff("life", 0), new CircuitOn("life", 1200));
  }

  @Test
  void aPoweredValveThatStaysShowsItWhenThePowerIsLost() {
    assertThat(effects(new Failure.PoweredValveDoesNotRest("fill-valve")))
        .containsExactlyInAnyOrder(
            new ValveFrozen("fill-valve"), new CircuitOff("main", 0), new CircuitOff("life", 600));
  }

  @Test
  void nothingShutsASupplyOffUpToTheNextVessel() {
    assertThat(effects(new Failure.SupplyDoesNotShut("mains")))
        .containsExactly(new ValveHeld("fill-valve", 1), new ValveHeld("reservoir-float", 1));
    assertThat(effects(new Failure.PurifierRunsOn("purifier")))
        .isEqualTo(effects(new Failure.SupplyDoesNotShut("mains")));
  }

  @Test
  void aPumpThatRunsOnHeedsNoControl() {
    assertThat(effects(new Failure.PumpRunsOn("top-off-pump")))
        .containsExactly(new IgnoresControls("top-off-pump"));
  }

  @Test
  void anOpenLidPoursTheWholeBoreAndNothingGoesOn() {
    RunLeaks leak = (RunLeaks) effects(new Failure.DeviceLidOpens("chiller")).getFirst();
    assertThat(leak.elevation()).isEqualTo(0.9);
    assertThat(leak.area()).isCloseTo(Math.PI / 4 * 0.032 * 0.032, within(1e-12));
    assertThat(leak.blockedBeyond()).isTrue();
  }

  @Test
  void aDripIsAsLargeAsTheSettingsSay() {
    assertThat(effects(new Failure.JointDrips("return-line", "chiller-union")))
        .containsExactly(
            new RunLeaks("return-line", 2, 1.0, OptionalInt.of(4), 2e-6, false, "plant-room"));
  }

  @Test
  void aCupOverflowsFromTheVesselThatFeedsItsPump() {
    assertThat(effects(new Failure.DeviceCupOverflows("skimmer")))
        .containsExactly(new Thrown("sump", 0.3, 1e-5, "skimmer-pump", "plant-tray"));
  }

  @Test
  void aStreamPumpThrowsWaterOutUntilItsInletIsBare() {
    assertThat(effects(new Failure.CirculationPumpThrowsWaterOut("stream-pump")))
        .containsExactly(new Thrown("display", 4.2, 1e-3, "stream-pump", "hall"));
  }

  @Test
  void aHoseThatSlipsOutLiesBesideItsVessel() {
    assertThat(effects(new Failure.EndSlipsOut("top-off-line", Failure.End.SECOND)))
        .containsExactly(new EndMoved("top-off-line", Failure.End.SECOND, "plant-tray", 0));
  }

  @Test
  void anOutletSinksNoDeeperThanTheBottom() {
    assertThat(outletElevation("return-line")).isCloseTo(4.15, within(1e-12));
    assertThat(outletElevation("drain-line")).isCloseTo(0.3, within(1e-12));
  }

  private static double outletElevation(String run) {
    Effect moved = effects(new Failure.OutletSinks(run, Failure.End.SECOND)).getFirst();
    return ((EndMoved) moved).elevation();
  }

  @Test
  void aClogLeavesNothingOrHalf() {
    assertThat(effects(new Failure.RunClogs("drain-line", Failure.Degree.FULLY)))
        .containsExactly(new RunNarrowed("drain-line", 0));
    assertThat(effects(new Failure.StrainerClogs("basket", Failure.Degree.BY_HALF)))
        .containsExactly(new RunNarrowed("drain-line", 0.5));
  }

  @Test
  void aSeamLeaksAtTheBottomIntoWhatTheVesselStandsIn() {
    assertThat(effects(new Failure.SeamLeaks("sump")))
        .containsExactly(new VesselLeaks("sump", 0.2, FailureResolver.SEAM_AREA, "plant-tray"));
  }

  @Test
  void toppingUpWhileStoppedPoursBeforeEverythingRestarts() {
    assertThat(effects(new Failure.ToppedUpWhileStopped("sump")))
        .contains(
            new CircuitOff("life", 0), new Poured("sump", 0.03, 1200), new CircuitOn("life", 1800));
  }

  @Test
  void failuresTogetherAreAllTheirEffectsOnce() {
    List<Effect> together =
        FailureResolver.resolve(
            SHOWROOM,
            List.of(
                new Failure.SiphonBreakBlocked("siphon-break"),
                new Failure.BuildingLosesPower(),
                new Failure.CircuitTrips("main")));
    assertThat(together)
        .containsExactlyInAnyOrder(
            new Effect.SiphonBreakHeldShut("siphon-break"),
            new CircuitOff("main", 0),
            new CircuitOff("life", 600));
  }

  @Test
  void aRunNeverPartsRightAtItsEnd() {
    RunParted parted =
        (RunParted) effects(new Failure.RunPartsAtLowestPoint("fill-branch")).getFirst();
    assertThat(parted.along()).isBetween(0.02, 5.98);
  }

  @Test
  void whatIsNotInTheDrawingIsNamed() {
    assertThatThrownBy(() -> effects(new Failure.SeamLeaks("moat")))
        .hasMessageContaining("no Vessel with the id \"moat\"");
  }
}
