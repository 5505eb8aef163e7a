package dryfloor.analysis.limit;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.analysis.installation.Shipped;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.Progress;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Marks alone are found with less work than all limits, and must not be other marks. */
class MarksTheShortWayTest {

  @ParameterizedTest
  @ValueSource(
      strings = {"first-look/as-drawn", "loft-reservoir/as-drawn", "loft-reservoir/corrected"})
  void theShortWayTellsWhatTheWholeSearchTells(String scenario) throws BaselineProblem {
    var drawing = Shipped.read(Path.of("..", "scenarios", scenario + ".json"));
    List<Property> levels =
        Limits.properties(drawing).stream()
            .filter(Property.RunningLevel.class::isInstance)
            .toList();

    LimitResult whole = Limits.of(drawing, levels, Bounds.DRY_FLOORS, 2, Progress.NONE);

    assertThat(Limits.highestRunningLevels(whole.today(), 2, Progress.NONE))
        .isEqualTo(marks(whole.answers()));
  }

  /** Those that end at something: what may stand at the rim has no mark. */
  static Map<String, Double> marks(List<LimitAnswer> whole) {
    Map<String, Double> marks = new TreeMap<>();
    for (LimitAnswer answer : whole) {
      if (answer instanceof LimitAnswer.Found found
          && found
              .today()
              .filter(range -> !(range.above() instanceof Decider.NotLookedAt))
              .isPresent()) {
        found.mark().ifPresent(mark -> marks.put(found.property().of(), mark));
      }
    }
    return marks;
  }
}
