package dryfloor.analysis.limit;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.installation.EverythingHouse;
import dryfloor.analysis.installation.Shipped;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.Progress;
import dryfloor.analysis.sweep.Sweep;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.model.Installation;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The marks are those that every millimetre with every failure tells. */
class MarksTheLongWayTest {

  @Test
  void everyMillimetreOfAShippedDrawing() throws BaselineProblem {
    SweepResult today = Sweep.everyFailure(Shipped.named("first-look/as-drawn"), 2, Progress.NONE);
    Property.RunningLevel sump = new Property.RunningLevel("sump");

    Map<String, Double> marks = Limits.highestRunningLevels(today, 2, Progress.NONE);

    assertThat(new EveryValue(today).highest(sump)).contains(marks.get("sump"));
  }

  /** What has nothing to do with a change leaves dry what it leaves dry as drawn. */
  @Test
  void whatIsNotRunWouldHaveBeenDry() throws BaselineProblem {
    assertThat(
            leftOut(EverythingHouse.asDrawn()) + leftOut(Shipped.named("loft-reservoir/corrected")))
        .as("answers that were not run")
        .isGreaterThan(500);
  }

  private static int leftOut(Installation drawing) throws BaselineProblem {
    EveryValue every = new EveryValue(Sweep.everyFailure(drawing, 2, Progress.NONE));
    int leftOut = 0;
    for (Property property : Limits.properties(drawing)) {
      Scale scale = new Choices(drawing).scale(property);
      for (int part = 1; part < 4; part++) {
        int step = scale.least() + (scale.most() - scale.least()) * part / 4;
        leftOut += every.checkUntouched(property, scale.value(step));
      }
    }
    return leftOut;
  }
}
