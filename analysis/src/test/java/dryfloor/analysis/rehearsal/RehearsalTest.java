package dryfloor.analysis.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureCatalogue;
import dryfloor.analysis.failure.FailureNames;
import dryfloor.analysis.installation.Shipped;
import dryfloor.analysis.outcome.Ending;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.Progress;
import dryfloor.analysis.sweep.Sweep;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.model.Installation;
import dryfloor.model.Redrawn;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * What may be tried on a living system. In the first example the sump rises by 34.57 mm when the
 * power fails (29.04 L on 0.84 m²) and has its rim 500 mm above its bottom; filled to 262 mm it
 * runs at 262.43 mm.
 */
class RehearsalTest {

  private static final String POWER_LOST = "power-lost.building";

  @Test
  void powerLossIsRehearsedAndBrokenOffACentimetreAboveWhatIsExpected() throws BaselineProblem {
    RehearsalStep step = step(withSumpAt(262));

    RehearsalStep.ExpectedLevel sump =
        step.levels().stream().filter(l -> l.vessel().equals("sump")).findFirst().orElseThrow();
    assertThat(step.means()).isEqualTo(Means.BREAKER);
    assertThat(1000 * (sump.expected() - sump.bottom())).isCloseTo(297.0, within(0.2));
    assertThat(1000 * (sump.abort() - sump.bottom())).isCloseTo(307.0, within(0.3));
    assertThat(step.readAfter()).isBetween(120.0, 2 * 3600.0);
  }

  @Test
  void traysAndBasinsMustStayDryWhileItIsRehearsed() throws BaselineProblem {
    assertThat(step(withSumpAt(262)).levels())
        .filteredOn(RehearsalStep.ExpectedLevel::staysDry)
        .extracting(RehearsalStep.ExpectedLevel::vessel)
        .containsExactly("pan", "vat");
    // Broken off once 10 mm of water stand in one of them.
    assertThat(step(withSumpAt(262)).levels())
        .filteredOn(level -> level.vessel().equals("vat"))
        .singleElement()
        .satisfies(vat -> assertThat(vat.abort() - vat.bottom()).isCloseTo(0.010, within(1e-4)));
  }

  @Test
  void whatLeavesLessThanTheAbortMarkAndACentimetreIsNotRehearsed() throws BaselineProblem {
    // 440 + 34.6 leaves 25 mm, 450 + 34.6 leaves 15 mm: broken off at 10 mm, 5 mm below the rim.
    assertThat(rehearsed(withSumpAt(440))).contains(POWER_LOST);
    assertThat(rehearsed(withSumpAt(450))).doesNotContain(POWER_LOST);
  }

  @Test
  void whatABasinMustCatchIsNotRehearsed() throws BaselineProblem {
    // 480 + 34.6 runs over by 15 mm, which the vat catches: the drawing is right, the risk is not.
    SweepResult sweep = sweep(withSumpAt(480));

    assertThat(ids(Rehearsal.of(sweep))).doesNotContain(POWER_LOST);
  }

  @Test
  void whatStopsLeastComesFirstAndPowerThatComesBackLast() throws BaselineProblem {
    List<RehearsalStep> steps = Rehearsal.of(sweep(withSumpAt(262)));

    assertThat(ids(steps))
        .containsSubsequence("pump-stops.return-pump", POWER_LOST, "power-lost-and-back.building");
    assertThat(steps)
        .extracting(step -> Extent.of(step.result().failure()))
        .hasSizeGreaterThan(2)
        .isSorted();
  }

  @Test
  void amongEqualsWhatLeavesMostRoomComesFirst() throws BaselineProblem {
    Installation restaurant =
        Shipped.read(Path.of("..", "scenarios", "restaurant-seafood", "corrected.json"));

    assertThat(Rehearsal.of(sweep(restaurant)))
        .filteredOn(step -> Extent.of(step.result().failure()) == Extent.ONE_THING)
        .extracting(RehearsalTest::leastRoomWhereItRose)
        .hasSizeGreaterThan(1)
        .isSortedAccordingTo((a, b) -> Double.compare(b, a));
  }

  @Test
  void nobodyIsAskedToWaitForDays() throws BaselineProblem {
    SweepResult sweep = sweep(withSumpAt(262));
    SweepResult slow =
        new SweepResult(
            sweep.installation(),
            sweep.normal(),
            sweep.results().stream()
                .map(result -> ended(result, new Ending.AtRest(3 * 3600)))
                .toList());

    assertThat(Rehearsal.of(sweep)).isNotEmpty();
    assertThat(Rehearsal.of(slow)).isEmpty();
  }

  @Test
  void nothingIsBrokenToSeeWhatHappens() {
    assertThat(FailureCatalogue.of(withSumpAt(262)))
        .filteredOn(
            failure ->
                failure instanceof Failure.WallFails
                    || failure instanceof Failure.SeamLeaks
                    || failure instanceof Failure.JointParts
                    || failure instanceof Failure.RunPartsAtLowestPoint
                    || failure instanceof Failure.SiphonBreakBlocked)
        .hasSizeGreaterThan(5)
        .allMatch(failure -> SafeMeans.of(failure).isEmpty());
  }

  private static Installation withSumpAt(double millimetres) {
    Installation drawn = Shipped.read(Path.of("..", "scenarios", "first-look", "corrected.json"));
    return Redrawn.vessel(
        drawn, "sump", sump -> sump.withLevel(sump.bottom() + millimetres / 1000));
  }

  private static SweepResult sweep(Installation drawing) throws BaselineProblem {
    return Sweep.everyFailure(drawing, 1, Progress.NONE);
  }

  private static List<String> rehearsed(Installation drawing) throws BaselineProblem {
    return ids(Rehearsal.of(sweep(drawing)));
  }

  private static List<String> ids(List<RehearsalStep> steps) {
    return steps.stream().map(step -> FailureNames.id(step.result().failure())).toList();
  }

  private static RehearsalStep step(Installation drawing) throws BaselineProblem {
    return Rehearsal.of(sweep(drawing)).stream()
        .filter(step -> FailureNames.id(step.result().failure()).equals(POWER_LOST))
        .findFirst()
        .orElseThrow();
  }

  private static double leastRoomWhereItRose(RehearsalStep step) {
    return step.result().outcome().vessels().stream()
        .filter(vessel -> vessel.highestLevel() > vessel.levelBefore() + 1e-3)
        .mapToDouble(vessel -> vessel.rim() - vessel.highestLevel())
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  private static FailureResult ended(FailureResult result, Ending ending) {
    if (!(result instanceof FailureResult.Answered answered)) {
      return result;
    }
    Outcome o = answered.outcome();
    return new FailureResult.Answered(
        answered.failure(),
        new Outcome(
            o.verdict(),
            ending,
            o.margin(),
            o.vessels(),
            o.floors(),
            o.beyond(),
            o.drained(),
            o.supplied(),
            o.firstSpill(),
            o.firstWetFloor(),
            o.dryPumps(),
            o.ledger(),
            o.story(),
            o.notes(),
            o.trajectory()));
  }
}
