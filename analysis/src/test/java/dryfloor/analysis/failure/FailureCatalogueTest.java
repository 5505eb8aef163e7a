package dryfloor.analysis.failure;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.model.FailureSettings;
import dryfloor.model.FailureSettings.Skipped;
import dryfloor.model.Installation;
import dryfloor.model.element.Circuit;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class FailureCatalogueTest {

  private static final Installation SHOWROOM = Showroom.installation();
  private static final List<Failure> ALL = FailureCatalogue.of(SHOWROOM);

  private static Stream<String> ids(Installation installation) {
    return FailureCatalogue.of(installation).stream().map(FailureNames::id);
  }

  @Test
  void everyKindOfFailureIsInSomeCatalogue() {
    assertThat(ALL.stream().<Object>map(Failure::getClass).distinct())
        .containsExactlyInAnyOrder((Object[]) Failure.class.getPermittedSubclasses());
  }

  @Test
  void noTwoFailuresShareAnId() {
    assertThat(ids(SHOWROOM)).doesNotHaveDuplicates();
  }

  @Test
  void idsAreTheOnesThatFilesAreWrittenWith() {
    assertThat(ids(SHOWROOM))
        .startsWith(
            "power-lost.building",
            "power-lost-and-back.building",
            "power-flickers.building",
            "only-backup-runs.building",
            "circuit-trips.life",
            "circuit-trips-for-a-while.life",
            "circuit-trips.main",
            "circuit-trips-for-a-while.main",
            "pump-stops.return-pump")
        .contains(
            "joint-parts.return-line.chiller-union",
            "parts-at-lowest-point.drain-line",
            "half-clogged.drain-line",
            "clogged.emergency-drain",
            "stuck-open.reservoir-float",
            "pump-against-shut-valve.return-pump.return-valve",
            "second-end-slips-out.top-off-line",
            "basin-drain-blocked.tray-drain")
        .endsWith(
            "topped-up-while-stopped.sump", "nobody-comes-back.building", "sequence.cut-twice");
  }

  @Test
  void theOrderOfTheFileDoesNotMatter() {
    assertThat(FailureCatalogue.of(Showroom.backToFront())).isEqualTo(ALL);
  }

  @Test
  void everyFailureChangesSomething() {
    assertThat(ALL)
        .allSatisfy(failure -> assertThat(FailureResolver.resolve(SHOWROOM, failure)).isNotEmpty());
  }

  @Test
  void aSingleCircuitDoesNotTripApartFromTheBuilding() {
    Installation oneCircuit = Showroom.withCircuits(List.of(new Circuit("main", "Main", 0)));
    assertThat(ids(oneCircuit))
        .contains("power-lost.building")
        .doesNotContain("circuit-trips.main", "only-backup-runs.building");
  }

  @Test
  void aCutThatEveryBackupBridgesIsNotListed() {
    Installation bridged = Showroom.withCircuits(List.of(new Circuit("main", "Main", 1500)));
    assertThat(ids(bridged))
        .contains("power-lost.building")
        .doesNotContain("power-lost-and-back.building", "power-flickers.building");
  }

  @Test
  void anUnfedDrawingHasNoPowerFailures() {
    assertThat(FailureCatalogue.of(Showroom.withCircuits(List.of())).stream())
        .noneMatch(FailureTraits::isOrdinaryEvent);
  }

  @Test
  void whatIsDryHasNoWaterToLose() {
    assertThat(ids(SHOWROOM))
        .contains("joint-parts.emergency-drain.emergency-joint", "seam-leaks.sump")
        .doesNotContain(
            "seam-leaks.plant-tray",
            "wall-fails.plant-tray",
            "joint-drips.emergency-drain.emergency-joint",
            "parts-at-lowest-point.emergency-drain",
            "parts-at-lowest-point.tray-drain");
  }

  @Test
  void onlyFreeEndsSlipAndOnlyOutletsNearTheWaterSink() {
    assertThat(ids(SHOWROOM))
        .contains("first-end-slips-out.top-off-line", "second-end-sinks.return-line")
        .doesNotContain(
            "first-end-slips-out.return-line",
            "first-end-slips-out.drain-line",
            "second-end-sinks.top-off-line",
            "second-end-sinks.tray-drain");
  }

  @Test
  void valvesFailOnlyInWaysThatDifferFromNormal() {
    assertThat(ids(SHOWROOM))
        .contains("found-open.return-valve", "found-shut.return-valve", "left-open.fill-tap")
        .doesNotContain("found-shut.fill-tap", "found-open.fill-tap", "left-open.return-valve");
  }

  @Test
  void aBaffleClogsByHalfAndTeethFully() {
    assertThat(ids(SHOWROOM))
        .contains("half-clogged.baffle", "half-clogged.teeth", "clogged.teeth")
        .doesNotContain("clogged.baffle");
  }

  @Test
  void aPumpInsideTheWaterItDrawsHasNoSealToLeak() {
    assertThat(ids(SHOWROOM))
        .contains("pump-seal-leaks.return-pump")
        .doesNotContain("pump-seal-leaks.top-off-pump", "pump-seal-leaks.skimmer-pump");
  }

  @Test
  void aPumpThatNothingSwitchesCannotRunOn() {
    Installation unswitched = Showroom.withRuns(ShowroomRuns.ALL);
    assertThat(ids(unswitched)).doesNotContain("pump-runs-on.top-off-pump");
    assertThat(ids(SHOWROOM)).contains("pump-runs-on.top-off-pump");
  }

  @Test
  void aFailureIsFoundByItsId() {
    assertThat(FailureCatalogue.find(SHOWROOM, "clogged.teeth"))
        .contains(new Failure.WeirClogs("teeth", Failure.Degree.FULLY));
    assertThat(FailureCatalogue.find(SHOWROOM, "clogged.moat")).isEmpty();
  }

  @Test
  void whatIsSwitchedOffWithoutExistingIsFound() {
    Skipped real = new Skipped("wall-fails.display", "calculated by an engineer");
    Skipped slip = new Skipped("wall-fails.displai", "calculated by an engineer");
    Installation skipping =
        Showroom.withSettings(
            new FailureSettings(List.of(real, slip), List.of(), List.of(), 1e-6, 1800, 1.5));
    assertThat(FailureCatalogue.unknownSkips(skipping)).containsExactly(slip);
  }
}
