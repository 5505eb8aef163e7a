package dryfloor.analysis.mark;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.installation.Shipped;
import dryfloor.analysis.mark.VesselMarks.PowerLoss;
import dryfloor.analysis.outcome.Outcome;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.FailureResult;
import dryfloor.analysis.sweep.Sweep;
import dryfloor.model.Installation;
import java.util.List;
import org.junit.jupiter.api.Test;

class OverflowTest {

  @Test
  void aSumpThatAPowerLossRunsOverOntoTheFloorIsTold() throws BaselineProblem {
    // 98 L of what runs down from the racks pass the rim of the collection sump.
    assertThat(powerLoss("research-rack-room/as-drawn", "collection-sump"))
        .isEqualTo(PowerLoss.WETS_A_FLOOR);
  }

  @Test
  void aVesselThatKeepsItsWaterSaysThatTheFloorGetsWetFromElsewhere() throws BaselineProblem {
    assertThat(powerLoss("research-rack-room/as-drawn", "filter-sump"))
        .isEqualTo(PowerLoss.KEEPS_WHILE_A_FLOOR_GETS_WET);
  }

  @Test
  void whereAPowerLossIsDryEveryVesselKeepsItsWater() throws BaselineProblem {
    assertThat(powerLoss("first-look/corrected", "sump")).isEqualTo(PowerLoss.KEEPS);
  }

  private static PowerLoss powerLoss(String scenario, String vessel) throws BaselineProblem {
    Installation drawing = Shipped.named(scenario);
    Outcome outcome =
        switch (Sweep.together(drawing, List.of(new Failure.BuildingLosesPower()))) {
          case FailureResult.Answered answered -> answered.outcome();
          case FailureResult.Unanswered unanswered -> throw new AssertionError(unanswered.reason());
          case FailureResult.Skipped skipped -> throw new AssertionError(skipped.reason());
        };
    return outcome.vessels().stream()
        .filter(found -> found.id().equals(vessel))
        .map(found -> Overflow.of(drawing, outcome, found))
        .findFirst()
        .orElseThrow();
  }
}
