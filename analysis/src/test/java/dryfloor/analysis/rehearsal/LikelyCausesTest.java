package dryfloor.analysis.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.Sweep;
import dryfloor.model.Installation;
import dryfloor.model.element.Vessel;
import dryfloor.model.file.InstallationFile;
import dryfloor.model.file.Reading;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** One thing is made otherwise, the levels that follow are "measured", and the thing is found. */
class LikelyCausesTest {

  private static final Failure POWER = new Failure.BuildingLosesPower();

  private final Installation drawing = read();

  @Test
  void aHigherFilledSumpIsFound() throws BaselineProblem {
    Cause.FilledOtherwise higher = new Cause.FilledOtherwise("sump", 0.020);
    assertThat(best(OtherwiseDrawn.filled(drawing, higher), List.of(POWER))).isEqualTo(higher);
  }

  @Test
  void aFasterPumpIsFound() throws BaselineProblem {
    Cause.PumpStronger faster = new Cause.PumpStronger("return-pump", 1.2);
    assertThat(best(OtherwiseDrawn.pumpStronger(drawing, faster), List.of(POWER)))
        .isEqualTo(faster);
  }

  @Test
  void rockThatIsNotDrawnIsFound() throws BaselineProblem {
    Cause.MoreDisplaced rock = new Cause.MoreDisplaced("sump", 0.10);
    assertThat(best(OtherwiseDrawn.moreDisplaced(drawing, rock), List.of(POWER))).isEqualTo(rock);
  }

  @Test
  void whereAllIsAsDrawnNothingIsLeftUnexplained() throws BaselineProblem {
    assertThat(ranked(drawing, List.of(POWER)))
        .filteredOn(ranked -> ranked.cause() instanceof Cause.AsDrawn)
        .singleElement()
        .satisfies(ranked -> assertThat(ranked.misfit()).hasValue(new Cause.Misfit(0, 0)));
  }

  @Test
  void aSumpThatStoodRightBeforeWasNotFilledHigher() throws BaselineProblem {
    // 20 mm too high at the end, by itself, is most simply a sump that was filled 20 mm higher; one
    // that stood where it should before, rose further.
    double rim = sump().rim();
    MeasuredLevel after = MeasuredLevel.after("sump", rim - 0.183);
    MeasuredLevel both = new MeasuredLevel("sump", OptionalDouble.of(rim - 0.238), rim - 0.183);
    Cause.FilledOtherwise higher = new Cause.FilledOtherwise("sump", 0.020);

    assertThat(misfit(higher, after)).isLessThan(1e-3);
    assertThat(misfit(higher, both)).isGreaterThan(10e-3);
  }

  private double misfit(Cause cause, MeasuredLevel measured) {
    return LikelyCauses.of(drawing, POWER, List.of(measured)).stream()
        .filter(ranked -> ranked.cause().equals(cause))
        .findFirst()
        .flatMap(Cause.Ranked::misfit)
        .map(Cause.Misfit::average)
        .orElseThrow();
  }

  @Test
  void aTrayThatIsDryOnSiteAndInTheDrawingMakesNoCauseLookBetter() {
    MeasuredLevel sump = MeasuredLevel.after("sump", sump().rim() - 0.183);
    Vessel pan = drawing.vessels().stream().filter(Vessel::isBasin).findFirst().orElseThrow();
    MeasuredLevel dryPan = MeasuredLevel.after(pan.id(), pan.bottom());

    assertThat(misfitAsDrawn(List.of(sump, dryPan))).isEqualTo(misfitAsDrawn(List.of(sump)));
  }

  @Test
  void whatIsLeftIsToldOnAverageAndAtMost() throws BaselineProblem {
    // The sump stands 20 mm higher than the drawing gives, the display where it should.
    List<MeasuredLevel> measured =
        List.of(
            MeasuredLevel.after("sump", sump().rim() - 0.183),
            MeasuredLevel.after("display", displayAfterPowerLoss()));

    assertThat(misfitAsDrawn(measured).average()).isCloseTo(0.010, within(5e-4));
    assertThat(misfitAsDrawn(measured).most()).isCloseTo(0.020, within(5e-4));
  }

  private Cause.Misfit misfitAsDrawn(List<MeasuredLevel> measured) {
    return LikelyCauses.of(drawing, POWER, measured).stream()
        .filter(ranked -> ranked.cause() instanceof Cause.AsDrawn)
        .flatMap(ranked -> ranked.misfit().stream())
        .findFirst()
        .orElseThrow();
  }

  private double displayAfterPowerLoss() throws BaselineProblem {
    return switch (Sweep.together(drawing, List.of(POWER))) {
      case FailureResult.Answered answered ->
          answered.outcome().vessels().stream()
              .filter(vessel -> vessel.id().equals("display"))
              .mapToDouble(Outcome.VesselOutcome::levelAfter)
              .findFirst()
              .orElseThrow();
      case FailureResult.Unanswered unanswered -> throw new AssertionError(unanswered.reason());
      case FailureResult.Skipped skipped -> throw new AssertionError(skipped.reason());
    };
  }

  private Vessel sump() {
    return drawing.vessels().stream()
        .filter(vessel -> vessel.id().equals("sump"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void nothingMeasuredIsNoQuestion() {
    assertThatThrownBy(() -> LikelyCauses.of(drawing, POWER, List.of()))
        .hasMessageContaining("at least one level");
  }

  private Cause best(Installation real, List<Failure> failures) throws BaselineProblem {
    return ranked(real, failures).getFirst().cause();
  }

  private List<Cause.Ranked> ranked(Installation real, List<Failure> failures)
      throws BaselineProblem {
    return switch (Sweep.together(real, failures)) {
      case FailureResult.Answered answered ->
          LikelyCauses.of(drawing, POWER, measured(answered.outcome()));
      case FailureResult.Unanswered unanswered -> throw new AssertionError(unanswered.reason());
      case FailureResult.Skipped skipped -> throw new AssertionError(skipped.reason());
    };
  }

  private static List<MeasuredLevel> measured(Outcome outcome) {
    return outcome.vessels().stream()
        .filter(vessel -> vessel.levelAfter() > vessel.bottom())
        .map(vessel -> MeasuredLevel.after(vessel.id(), vessel.levelAfter()))
        .toList();
  }

  private static Installation read() {
    return switch (InstallationFile.read(
        Path.of("..", "scenarios", "first-look", "corrected.json"))) {
      case Reading.Read read -> read.installation();
      case Reading.Rejected rejected -> throw new AssertionError(rejected.problems());
    };
  }
}
