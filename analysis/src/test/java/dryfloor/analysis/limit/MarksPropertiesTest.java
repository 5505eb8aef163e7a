package dryfloor.analysis.limit;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.generated.Building;
import dryfloor.analysis.generated.Tried;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.Inquiry;
import dryfloor.analysis.sweep.Progress;
import dryfloor.analysis.sweep.Sweep;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.model.Installation;
import java.util.List;
import java.util.concurrent.CancellationException;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.statistics.Statistics;

/** Marks and what is not run for them, in buildings by chance. */
@Tried
class MarksPropertiesTest {

  /** A building that is not answered within so many steps is not waited for. */
  private static final int PATIENCE = 30_000;

  @net.jqwik.api.Property(tries = 8, edgeCases = EdgeCasesMode.NONE)
  void theShortWayTellsWhatTheWholeSearchTells(@ForAll Building building) throws BaselineProblem {
    SweepResult today = answered(building.draw());
    List<Property> levels = levels(today.installation());

    List<LimitAnswer> whole = Limits.of(today, levels, Bounds.DRY_FLOORS, 1, Progress.NONE);

    assertThat(Limits.highestRunningLevels(today, 1, Progress.NONE))
        .isEqualTo(MarksTheShortWayTest.marks(whole));
  }

  @net.jqwik.api.Property(tries = 8, edgeCases = EdgeCasesMode.NONE)
  void whatIsNotRunWouldHaveBeenDry(@ForAll Building building) throws BaselineProblem {
    SweepResult today = answered(building.draw());
    EveryValue every = new EveryValue(today);
    int leftOut = 0;
    for (Property property : Limits.properties(today.installation())) {
      Scale scale = new Choices(today.installation()).scale(property);
      leftOut += every.checkUntouched(property, scale.value((scale.least() + scale.most()) / 2));
    }
    Statistics.label("answers not run").collect(leftOut > 0 ? "some" : "none");
  }

  private static List<Property> levels(Installation drawing) {
    return Limits.properties(drawing).stream()
        .filter(Property.RunningLevel.class::isInstance)
        .toList();
  }

  private static SweepResult answered(Installation drawing) {
    int[] steps = {0};
    try {
      Inquiry inquiry = Inquiry.of(drawing, () -> ++steps[0] > PATIENCE);
      SweepResult all = Sweep.everyFailure(inquiry, 1, Progress.NONE);
      Assume.that(steps[0] <= PATIENCE);
      return all;
    } catch (BaselineProblem | CancellationException unsound) {
      Assume.that(false);
      throw new IllegalStateException(unsound);
    }
  }
}
