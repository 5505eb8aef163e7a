package dryfloor.analysis.emergency;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.failure.FailureCatalogue;
import dryfloor.analysis.installation.Shipped;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.Sweep;
import dryfloor.model.Installation;
import dryfloor.model.file.InstallationFile;
import dryfloor.model.file.Reading;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class FirstStepsTest {

  private final Installation drawing = read();

  @Test
  void aPumpThatFeedsTheBreakIsSwitchedOff() throws BaselineProblem {
    assertThat(steps(List.of(new Failure.RunPartsAtLowestPoint("return-line"))).getFirst())
        .isInstanceOfSatisfying(
            FirstStep.SwitchOff.class, off -> assertThat(off.parts()).contains("return-pump"));
  }

  @Test
  void nobodySwitchesOffWhatHasNoPower() throws BaselineProblem {
    assertThat(
            steps(
                List.of(
                    new Failure.BuildingLosesPower(),
                    new Failure.RunPartsAtLowestPoint("return-line"))))
        .noneMatch(FirstStep.SwitchOff.class::isInstance);
  }

  @Test
  void whereNoFloorGetsWetThereIsNothingToDo() throws BaselineProblem {
    assertThat(steps(List.of(new Failure.BuildingLosesPower()))).isEmpty();
  }

  @Test
  void whereAllThatRunsOverComesFromASupplyThatAloneIsShut() throws BaselineProblem {
    // The return pump of the racks only keeps the water going round: without it the racks run down
    // into the sump that runs over.
    assertThat(rackRoom("stuck-open.top-off-valve"))
        .containsExactly(new FirstStep.ShutSupply("house-purified"));
    assertThat(rackRoom("supply-does-not-shut.house-purified"))
        .containsExactly(new FirstStep.ShutSupply("house-purified"));
  }

  @Test
  void aSeamThatASupplyKeepsRunningIsCutOffFromTheSupplyFirst() throws BaselineProblem {
    List<FirstStep> steps = rackRoom("seam-leaks.rack-a-upper");
    assertThat(steps.getFirst()).isEqualTo(new FirstStep.ShutSupply("house-purified"));
    assertThat(steps).anyMatch(FirstStep.SwitchOff.class::isInstance);
  }

  private static List<FirstStep> rackRoom(String failure) throws BaselineProblem {
    Installation rooms = Shipped.named("research-rack-room/as-drawn");
    return steps(rooms, List.of(FailureCatalogue.find(rooms, failure).orElseThrow()));
  }

  private List<FirstStep> steps(List<Failure> failures) throws BaselineProblem {
    return steps(drawing, failures);
  }

  private static List<FirstStep> steps(Installation drawing, List<Failure> failures)
      throws BaselineProblem {
    return switch (Sweep.together(drawing, failures)) {
      case FailureResult.Answered answered -> FirstSteps.of(drawing, answered.outcome());
      case FailureResult.Unanswered unanswered -> throw new AssertionError(unanswered.reason());
      case FailureResult.Skipped skipped -> throw new AssertionError(skipped.reason());
    };
  }

  private static Installation read() {
    return switch (InstallationFile.read(
        Path.of("..", "scenarios", "first-look", "as-drawn.json"))) {
      case Reading.Read read -> read.installation();
      case Reading.Rejected rejected -> throw new AssertionError(rejected.problems());
    };
  }
}
